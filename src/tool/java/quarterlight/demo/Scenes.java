package quarterlight.demo;

/** Finds who draws a scene by its name. */
final class Scenes {
    private Scenes() {}

    static void draw(String name, Scene scene) {
        switch (name) {
            case "panel" -> new Panels(scene).draw();
            case "rust" -> new RustScenes(scene).draw();
            default -> throw new IllegalArgumentException("no scene " + name);
        }
    }
}
