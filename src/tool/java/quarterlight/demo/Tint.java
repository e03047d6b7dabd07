package quarterlight.demo;

/** A color in linear light, each part 0 to 1 (more for lamps). */
record Tint(float r, float g, float b) {
    static Tint hex(String rgb) {
        int value = Integer.parseInt(rgb.replace("#", ""), 16);
        return new Tint(linear(value >> 16 & 255), linear(value >> 8 & 255), linear(value & 255));
    }

    Tint times(double f) {
        return new Tint((float) (r * f), (float) (g * f), (float) (b * f));
    }

    Tint mix(Tint other, double share) {
        float s = (float) share;
        return new Tint(r + (other.r - r) * s, g + (other.g - g) * s, b + (other.b - b) * s);
    }

    private static float linear(int c) {
        double s = c / 255.0;
        return (float) (s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4));
    }
}
