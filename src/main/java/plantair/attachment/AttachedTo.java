package plantair.attachment;

import java.util.Optional;
import java.util.stream.Stream;
import plantair.register.ChangeKind;

/** What photos and papers can be attached to: the kinds of records of these names, and the pages that show them. */
public enum AttachedTo {
    /** A site. */
    SITE("/sites/{id}"),
    /** A compressor. */
    COMPRESSOR("/compressors/{id}"),
    /** A receiver. */
    RECEIVER("/receivers/{id}"),
    /** A pipe piece. */
    PIPE("/pipes"),
    /** An instrument. */
    INSTRUMENT("/instruments/{id}"),
    /** A calibration. */
    CALIBRATION("/calibrations/{id}/impact"),
    /** Work done on a compressor. */
    EVENT("/events/{id}"),
    /** A pump-up test. */
    TEST("/tests/{id}"),
    /** Quarterly readings of a machine. */
    READINGS("/guided/readings/{id}"),
    /** A relief valve; like the next ones on the page of its receiver. */
    VALVE("/receivers"),
    /** A test of a relief valve. */
    VALVE_TEST("/receivers"),
    /** A certificate or permit of a receiver. */
    CERTIFICATE("/receivers"),
    /** An inspection of a receiver. */
    INSPECTION("/receivers"),
    /** Damage seen on a receiver. */
    FINDING("/receivers"),
    /** An offer of a compressor. */
    OFFER("/offers/{id}"),
    /** A leak test of a site. */
    LEAK_TEST("/leak-tests/{id}"),
    /** A leak that was found. */
    FOUND_LEAK("/leaks/{id}");

    private static final String ID = "{id}";

    private final String page;

    AttachedTo(String page) {
        this.page = page;
    }

    /** The kind of record. */
    public ChangeKind kind() {
        return ChangeKind.valueOf(name());
    }

    /** Address of the page of a record. */
    public String page(long id) {
        return page.replace(ID, String.valueOf(id));
    }

    /** The kind that a page shows, by the pattern of its address; empty for any other page. */
    public static Optional<AttachedTo> shownBy(String pattern) {
        String plain = pattern.replaceAll("\\{id:[^}]*}", "{id}");
        return Stream.of(values())
                .filter(to -> to.page.contains(ID) && to.page.equals(plain))
                .findFirst();
    }

    /** The kind of that name. */
    public static Optional<AttachedTo> byName(String name) {
        return Stream.of(values()).filter(to -> to.name().equals(name)).findFirst();
    }
}
