package dev.hingepoint.samples;

import dev.hingepoint.Refusal;
import dev.hingepoint.pattern.Unit;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The unit that a person asks for. */
final class Units implements ITypeConverter<Unit> {
    @Override
    public Unit convert(String text) {
        try {
            return Unit.parse(text);
        } catch (Refusal refusal) {
            throw new TypeConversionException(refusal.reason().what());
        }
    }
}
