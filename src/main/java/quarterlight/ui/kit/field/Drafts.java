package quarterlight.ui.kit.field;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.swing.text.JTextComponent;

/**
 * What was typed in the form of a row and not kept, while the form shows another row; it stands there again when its row comes back. A
 * changed row is kept when the keyboard leaves a field, so what waits here is of rows to come, or cannot be kept as it is. Event thread only.
 */
public final class Drafts {
    private final List<? extends JTextComponent> fields;
    private final Map<Optional<Object>, List<String>> waiting = new HashMap<>();
    private Optional<Object> row = Optional.empty();
    private List<String> clean;

    public Drafts(List<? extends JTextComponent> fields) {
        this.fields = List.copyOf(fields);
        this.clean = texts();
    }

    /** Keeps a changed row when the keyboard leaves one of the fields; rows to come wait for the command to keep them. */
    public Drafts keeping(Runnable keepRow) {
        fields.forEach(field -> TypedText.keeping(field, () -> row.ifPresent(known -> keepRow.run())));
        return this;
    }

    private List<String> texts() {
        return fields.stream().map(JTextComponent::getText).toList();
    }

    private void texts(List<String> typed) {
        for (int i = 0; i < fields.size(); i++) {
            fields.get(i).setText(typed.get(i));
        }
    }

    /** Shows a kept row; {@code fill} writes it into the fields. */
    public void show(Object key, Runnable fill) {
        turnTo(Optional.of(Objects.requireNonNull(key, "key")), fill);
    }

    /** The form is free for a row to come. */
    public void free() {
        turnTo(Optional.empty(), () -> fields.forEach(field -> field.setText("")));
    }

    private void turnTo(Optional<Object> next, Runnable fill) {
        List<String> now = texts();
        if (!now.equals(clean)) {
            waiting.put(row, now);
        }
        row = next;
        fill.run();
        clean = texts();
        Optional.ofNullable(waiting.remove(next)).ifPresent(this::texts);
    }

    /** What stands in the form is kept now. */
    public void kept() {
        waiting.remove(row);
        clean = texts();
    }

    /** The text of the field in hand is let go of: what was kept stands there again. */
    public void takeBack() {
        texts(clean);
    }
}
