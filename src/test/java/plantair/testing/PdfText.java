package plantair.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * What a reader finds in a PDF.
 *
 * @param words all words with one blank between them
 * @param pages how many there are
 * @param title in its description
 * @param language of its words
 * @param isTagged whether it can be read out
 * @param width of the first page in points
 */
public record PdfText(String words, int pages, String title, String language, boolean isTagged, int width) {

    public static PdfText of(byte[] file) {
        try (PDDocument document = Loader.loadPDF(file)) {
            var catalog = document.getDocumentCatalog();
            return new PdfText(
                    new PDFTextStripper().getText(document).replaceAll("\\s+", " "),
                    document.getNumberOfPages(),
                    document.getDocumentInformation().getTitle(),
                    catalog.getLanguage(),
                    catalog.getMarkInfo() != null && catalog.getMarkInfo().isMarked(),
                    Math.round(document.getPage(0).getMediaBox().getWidth()));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
