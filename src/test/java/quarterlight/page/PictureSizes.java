package quarterlight.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.DrawObject;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorName;
import org.apache.pdfbox.contentstream.operator.state.Concatenate;
import org.apache.pdfbox.contentstream.operator.state.Restore;
import org.apache.pdfbox.contentstream.operator.state.Save;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/** Measures how large the pictures of a PDF are on paper. */
public final class PictureSizes extends PDFStreamEngine {
    private static final double MM_PER_PT = 25.4 / 72;

    private final List<Size> sizes = new ArrayList<>();

    private PictureSizes() {
        addOperator(new Concatenate(this));
        addOperator(new DrawObject(this));
        addOperator(new Save(this));
        addOperator(new Restore(this));
    }

    /** Width and height of every picture in mm, in the order of the pages. */
    public static List<Size> of(PDDocument document) throws IOException {
        PictureSizes engine = new PictureSizes();
        for (PDPage page : document.getPages()) {
            engine.processPage(page);
        }
        return engine.sizes;
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if (operator.getName().equals(OperatorName.DRAW_OBJECT)
                && operands.get(0) instanceof COSName name
                && getResources().isImageXObject(name)
                && getResources().getXObject(name) instanceof PDImageXObject) {
            Matrix now = getGraphicsState().getCurrentTransformationMatrix();
            sizes.add(new Size(now.getScalingFactorX() * MM_PER_PT, now.getScalingFactorY() * MM_PER_PT));
        } else {
            super.processOperator(operator, operands);
        }
    }

    /** Width and height, mm. */
    public record Size(double width, double height) {
        public double longer() {
            return Math.max(width, height);
        }
    }
}
