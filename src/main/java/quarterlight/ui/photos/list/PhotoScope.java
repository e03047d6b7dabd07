package quarterlight.ui.photos.list;

import java.util.Locale;

/** Which photos the contact sheet shows. */
public enum PhotoScope {
    ALL,
    UNPINNED,
    ASIDE,
    NOTED,
    SOFT,
    ALIKE,
    DARK,
    BRIGHT;

    /** Text key of the choice; its count is the argument. */
    public String textKey() {
        return "photos.show." + name().toLowerCase(Locale.ROOT);
    }

    /** True where the next photo to come up is the next without a pin. */
    boolean isForPinning() {
        return this == ALL || this == UNPINNED;
    }

    /** True where pictures must be looked at first. */
    boolean restsOnPictures() {
        return switch (this) {
            case SOFT, ALIKE, DARK, BRIGHT -> true;
            case ALL, UNPINNED, ASIDE, NOTED -> false;
        };
    }

    boolean takes(PhotoItem item, PhotoHints hints) {
        return switch (this) {
            case ALL -> true;
            case UNPINNED -> item.isOpen();
            case ASIDE -> item.isAside();
            case NOTED -> item.noted();
            case SOFT -> !item.isAside() && hints.isSoft(item.id());
            case ALIKE -> !item.isAside() && hints.alike(item.id()).isPresent();
            case DARK -> !item.isAside() && hints.isDark(item.id());
            case BRIGHT -> !item.isAside() && hints.isBright(item.id());
        };
    }
}
