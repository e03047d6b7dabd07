package quarterlight.demo;

import java.io.File;
import java.io.IOException;
import javax.imageio.ImageIO;

/** Draws one photo: kind, parameters, file. */
public final class Try {
    private Try() {}

    public static void main(String[] args) throws IOException {
        Type type = new Type();
        Palette green = new Palette("#23493d", 0.9, "#7a3a2c", "#1d1c1a", "#b4532a");
        Palette blue = new Palette("#5f7f9d", 0.3, "#6f3b2e", "#22303f", "#4a6fa0");
        for (int i = 0; i + 2 < args.length; i += 3) {
            Params params = Params.parse(args[i + 1]);
            Scene scene = new Scene(type, params.has("blue") ? blue : green, params, 42 + i, 1200, 900);
            Scenes.draw(args[i], scene);
            ImageIO.write(scene.take().image(), "png", new File(args[i + 2]));
        }
    }
}
