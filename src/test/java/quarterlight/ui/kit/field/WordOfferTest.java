package quarterlight.ui.kit.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** Down takes the words that begin with what was typed, one after the other. */
class WordOfferTest {
    private final JTextField field = new JTextField();

    private void down() {
        field.getActionMap().get("take-offer").actionPerformed(new ActionEvent(field, 0, ""));
    }

    private String offered() {
        return ((JLabel) field.getClientProperty("JTextField.trailingComponent")).getText();
    }

    @Test
    void eachDownTakesTheNextAndAfterTheLastTheFirst() {
        WordOffer.in(field, () -> List.of("Engine block", "Radiator", "Engine assembly"));
        field.setText("e");
        down();
        assertThat(field.getText()).as("one letter is too few").isEqualTo("e");
        field.setText("en");
        assertThat(offered()).startsWith("Engine block");
        down();
        assertThat(field.getText()).isEqualTo("Engine block");
        assertThat(offered()).startsWith("Engine assembly");
        down();
        assertThat(field.getText()).isEqualTo("Engine assembly");
        assertThat(offered()).isEmpty();
        down();
        assertThat(field.getText()).isEqualTo("Engine block");
        field.setText("rad");
        down();
        assertThat(field.getText()).isEqualTo("Radiator");
    }
}
