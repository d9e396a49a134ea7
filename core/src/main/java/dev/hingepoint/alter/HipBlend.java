package dev.hingepoint.alter;

final class HipBlend implements Alteration {
    @Override
    public String name() {
        return "hip blend";
    }

    @Override
    public Altered alter(dev.hingepoint.pattern.Draft d, Options o) {
        throw new IllegalStateException();
    }
}
