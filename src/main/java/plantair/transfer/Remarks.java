package plantair.transfer;

import java.util.ArrayList;
import java.util.List;
import org.springframework.context.MessageSourceResolvable;

/** Remarks in the order of finding: the first two hundred, and how many there are. */
public final class Remarks {

    /** More are counted only. */
    public static final int MOST = 200;

    private final List<Remark> first = new ArrayList<>();
    private long count;

    Remarks() {}

    Remarks(List<Remark> first, long count) {
        this.first.addAll(first);
        this.count = count;
    }

    void add(String file, long line, String column, String code, Object... args) {
        add(file, line, column, Remark.words(code, args));
    }

    void add(String file, long line, String column, MessageSourceResolvable words) {
        count++;
        if (first.size() < MOST) {
            first.add(new Remark(file, line, column, words));
        }
    }

    public boolean isEmpty() {
        return count == 0;
    }

    public List<Remark> first() {
        return List.copyOf(first);
    }

    public long count() {
        return count;
    }
}
