package quarterlight.walk;

import java.util.List;
import java.util.Random;

/** A simulated inspector with habits of their own, made once; each visit is another walk by these habits. */
@FunctionalInterface
public interface Walker {
    /** The photos of one visit in the order of their times. */
    List<Snap> visit(Random random);
}
