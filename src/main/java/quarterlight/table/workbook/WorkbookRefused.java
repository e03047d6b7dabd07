package quarterlight.table.workbook;

import java.util.List;

/** A workbook that cannot be taken as a table, with the reason as the end of a sentence that begins with its name. */
public final class WorkbookRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<String> sheets;

    WorkbookRefused(String reason) {
        this(reason, List.of());
    }

    WorkbookRefused(String reason, List<String> sheets) {
        super(reason);
        this.sheets = List.copyOf(sheets);
    }

    /** The sheets of which one is to be chosen; empty if that is not what is asked. */
    public List<String> sheets() {
        return sheets;
    }
}
