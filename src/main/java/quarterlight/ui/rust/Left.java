package quarterlight.ui.rust;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;

/** Does something when the keyboard leaves a field. */
final class Left extends FocusAdapter {
    private final Runnable work;

    private Left(Runnable work) {
        this.work = work;
    }

    static FocusListener then(Runnable work) {
        return new Left(work);
    }

    @Override
    public void focusLost(FocusEvent e) {
        work.run();
    }
}
