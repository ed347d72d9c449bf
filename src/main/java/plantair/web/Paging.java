package plantair.web;

import org.jspecify.annotations.Nullable;

/**
 * One page of a long list, for {@code fragments/pager}.
 *
 * @param href address of the list, with its other parameters if any
 * @param page number of this page, from 1
 * @param size rows a page
 * @param total rows in all
 */
public record Paging(String href, int page, int size, long total) {

    /** Keeps the number of rows before a page an int, as the database wants it. */
    private static final int MOST_PAGES = 1_000_000;

    /** @throws NoSuchRecord when the list has no such page; page 1 is always there */
    public Paging {
        if (page < 1 || page > pages(total, size)) {
            throw new NoSuchRecord("no page " + page);
        }
    }

    /** Number from 0, as repositories count, of a page somebody asks for before it is known which there are. */
    public static int index(int asked) {
        return Math.min(Math.max(asked, 1), MOST_PAGES) - 1;
    }

    private static long pages(long total, int size) {
        return Math.max(1, (total + size - 1) / size);
    }

    /** Number of pages, at least 1. */
    public long pages() {
        return pages(total, size);
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
