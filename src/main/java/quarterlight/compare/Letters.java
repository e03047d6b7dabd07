package quarterlight.compare;

import java.util.Objects;

/** What the two cars of a comparison are called in sentences: A and B, or two others of up to six. */
public record Letters(String a, String b) {
    public static final Letters AB = new Letters("A", "B");

    public Letters {
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
    }

    public String of(Side side) {
        return side == Side.A ? a : b;
    }
}
