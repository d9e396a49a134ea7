package dev.hingepoint.alter;

final class FullBust implements Alteration {
    @Override
    public String name() {
        return "full bust";
    }

    @Override
    public Altered alter(dev.hingepoint.pattern.Draft d, Options o) {
        throw new IllegalStateException();
    }
}
