package dev.hingepoint.samples;

import dev.hingepoint.pattern.Unit;
import picocli.CommandLine.ITypeConverter;

/** The unit that a person asks for. */
final class Units implements ITypeConverter<Unit> {
    @Override
    public Unit convert(String text) {
        return Unit.parse(text);
    }
}
