package plantair.web;

import org.jspecify.annotations.Nullable;

/**
 * One page of a long list, for {@code fragments/pager}. Only the first {@value #MOST_ROWS} rows have pages, since a database
 * counts and skips rows one by one; whoever looks for more asks for less.
 *
 * @param href address of the list, with its other parameters if any
 * @param page number of this page, from 1
 * @param size rows a page
 * @param total rows in all; anything above {@link #MOST_ROWS} where there are more
 */
public record Paging(String href, int page, int size, long total) {

    /** Rows that are counted and have pages. */
    public static final int MOST_ROWS = 10_000;

    /** What a repository counts to when it counts no further than to see that there are more. */
    public static final String AND_ONE_MORE = "10001";

    /** @throws NoSuchRecord when the list has no such page; page 1 is always there */
    public Paging {
        if (page < 1 || page > pages(total, size)) {
            throw new NoSuchRecord("no page " + page);
        }
    }

    /** Number from 0, as repositories count, of a page somebody asks for before it is known which there are. */
    public static int index(int asked) {
        return Math.min(Math.max(asked, 1), MOST_ROWS) - 1;
    }

    private static long pages(long total, int size) {
        return Math.max(1, (Math.min(total, MOST_ROWS) + size - 1) / size);
    }

    /** Number of pages, at least 1. */
    public long pages() {
        return pages(total, size);
    }

    /** Whether there are rows that no page shows. */
    public boolean isCut() {
        return total > MOST_ROWS;
    }

    /** Number of this page from 0, as repositories count. */
    public int index() {
        return page - 1;
    }

    /** Address of the page before; null on the first. */
    public @Nullable String previous() {
        return page > 1 ? address(page - 1) : null;
    }

    /** Address of the page after; null on the last. */
    public @Nullable String next() {
        return page < pages() ? address(page + 1) : null;
    }

    private String address(int number) {
        return href + (href.indexOf('?') < 0 ? "?" : "&") + "page=" + number;
    }
}
