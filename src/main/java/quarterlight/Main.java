package quarterlight;

/** Reads the arguments, builds the objects, and hands over to the command line or the desktop. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(0);
    }
}
