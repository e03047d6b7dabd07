package quarterlight.demo;

/**
 * The colors of one car.
 *
 * @param body paint as it is now
 * @param gloss 0 chalky to 1 deep
 * @param primer under the paint
 * @param trim of the cabin
 * @param engine paint of the engine
 */
record Palette(String body, double gloss, String primer, String trim, String engine) {
    Stuff paint() {
        return Stuff.paint(body, gloss);
    }
}
