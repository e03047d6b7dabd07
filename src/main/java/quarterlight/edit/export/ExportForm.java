package quarterlight.edit.export;

import quarterlight.units.Worded;

/** The forms in which a visit is written for other programs. */
public enum ExportForm implements Worded {
    /** A folder: every table as CSV, all of it as JSON, the diagram, and a sidecar for each photo. */
    TABLES(true, ""),
    /** One workbook with a sheet per table. */
    XLSX(false, ".xlsx"),
    /** Outlines and notes as COCO. */
    COCO(false, ".json"),
    /** Outlines and notes as GeoJSON in pixels. */
    GEOJSON(false, ".geojson"),
    /** Outlines and notes as Web Annotations. */
    ANNOTATIONS(false, ".jsonld"),
    /** A folder: a sidecar for each photo. */
    XMP(true, ""),
    /** A folder: each view of the body diagram as SVG and PNG. */
    VIEWS(true, "");

    private final boolean folder;
    private final String ending;

    ExportForm(boolean folder, String ending) {
        this.folder = folder;
        this.ending = ending;
    }

    /** Whether it is a folder of several files; else one file. */
    public boolean isFolder() {
        return folder;
    }

    /** How the name of its file usually ends; nothing for a folder. */
    public String ending() {
        return ending;
    }

    /** Whether the body diagram is drawn for it. */
    public boolean isDrawn() {
        return this == TABLES || this == VIEWS;
    }
}
