package quarterlight.demo;

/** Finds who draws a scene by its name. */
final class Scenes {
    private Scenes() {}

    static void draw(String name, Scene scene) {
        switch (name) {
            case "panel" -> new Panels(scene).draw();
            case "rust" -> new RustScenes(scene).draw();
            case "car" -> new WholeCar(scene).draw();
            case "inside" -> new Inside(scene).draw();
            case "beneath" -> new Beneath(scene).draw();
            case "trim" -> new Trim(scene).draw();
            case "stamp" -> new Marks(scene).stamp();
            case "plate" -> new Marks(scene).plate();
            case "label" -> new Marks(scene).label();
            case "casting" -> new Marks(scene).casting();
            case "tire" -> new Marks(scene).tire();
            case "glass" -> new Marks(scene).glass();
            case "clock" -> new Bench(scene).clock();
            case "check" -> new Bench(scene).check();
            case "paper" -> new Bench(scene).paper();
            default -> throw new IllegalArgumentException("no scene " + name);
        }
    }
}
