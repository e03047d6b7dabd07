package quarterlight.demo;

/** The two invented cameras. */
enum Camera {
    /** Its clock was never set right; it writes no offset, no fraction, but a thumbnail and its serial number. */
    COMPACT("Orrin", "Fieldview 12", "OF120447", "orrin-fieldview-12"),
    /** A phone: right by the network, offset and fraction in every file. */
    PHONE("Pellam", "P6 Dual", "", "pellam-p6");

    private final String maker;
    private final String model;
    private final String serial;
    private final String folder;

    Camera(String maker, String model, String serial, String folder) {
        this.maker = maker;
        this.model = model;
        this.serial = serial;
        this.folder = folder;
    }

    String maker() {
        return maker;
    }

    String model() {
        return model;
    }

    String serial() {
        return serial;
    }

    String folder() {
        return folder;
    }
}
