package plantair.attachment;

import java.text.Normalizer;
import org.jspecify.annotations.Nullable;

/** The name of a file as it was sent: its last part, without what no page and no header should show. */
public final class SentName {

    private static final int LONGEST = 150;

    private SentName() {}

    /** Fit to be shown; "file" when nothing is left. */
    public static String of(@Nullable String sent) {
        String whole = sent == null ? "" : Normalizer.normalize(sent, Normalizer.Form.NFC);
        String name = whole.substring(Math.max(whole.lastIndexOf('/'), whole.lastIndexOf('\\')) + 1)
                .replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]", "")
                .strip();
        String cut = name.substring(0, Math.min(name.length(), LONGEST)).replaceAll("\\p{Cs}", "");
        return cut.isEmpty() ? "file" : cut;
    }
}
