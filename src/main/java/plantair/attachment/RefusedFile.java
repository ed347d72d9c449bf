package plantair.attachment;

import java.util.Arrays;
import java.util.List;

/** A file that may not be attached. */
public final class RefusedFile extends Exception {

    private static final long serialVersionUID = 1;

    private final Reason reason;
    private final String[] arguments;

    RefusedFile(Reason reason, String... arguments) {
        super(reason + " " + Arrays.toString(arguments));
        this.reason = reason;
        this.arguments = arguments.clone();
    }

    /** Why. */
    public enum Reason {
        /** No byte. */
        EMPTY,
        /** More bytes than the installation takes. */
        TOO_LARGE,
        /** A photo in a format that many programs cannot read. */
        HEIC,
        /** A picture of a web page, which this program cannot check. */
        WEBP,
        /** None of the formats that are taken. */
        UNKNOWN,
        /** It breaks off, or a part of it is damaged. */
        BROKEN,
        /** Something else is hidden behind the picture. */
        MORE_BEHIND,
        /** A picture of more points than can be looked at. */
        TOO_MANY_POINTS,
        /** A paper that brings a program with it. */
        PROGRAM
    }

    public Reason reason() {
        return reason;
    }

    /** What the words of the reason name. */
    public List<String> arguments() {
        return List.of(arguments);
    }
}
