package plantair.testrecord.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.StoredResult;
import plantair.testrecord.StoredResults;
import plantair.testrecord.TestPagePart;
import plantair.testrecord.TestReview;
import plantair.testrecord.TestReviews;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.UnitSet;

/** Shows pump-up tests. */
@Controller
class TestController {

    private static final int PAGE_SIZE = 25;

    private final PumpUpTests tests;
    private final StoredResults results;
    private final TestReviews reviews;
    private final TestViews views;
    private final ObjectProvider<TestPagePart> parts;

    TestController(
            PumpUpTests tests,
            StoredResults results,
            TestReviews reviews,
            TestViews views,
            ObjectProvider<TestPagePart> parts) {
        this.tests = tests;
        this.results = results;
        this.reviews = reviews;
        this.views = views;
        this.parts = parts;
    }

    @GetMapping("/tests")
    @Transactional(readOnly = true)
    public String list(
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(required = false) @Nullable Long compressor,
            @RequestParam(defaultValue = "false") boolean unreviewed,
            UnitSet units,
            Locale locale,
            Model model) {
        PageRequest request = PageRequest.of(Paging.index(page), PAGE_SIZE);
        Page<PumpUpTest> found = find(compressor, unreviewed, request);
        String href = href(compressor, unreviewed);
        model.addAttribute("paging", new Paging(href, page, PAGE_SIZE, found.getTotalElements()));
        model.addAttribute("rows", rows(found.getContent(), views.words(units, locale)));
        model.addAttribute("unreviewed", unreviewed);
        model.addAttribute("otherHref", href(compressor, !unreviewed));
        return "tests/list";
    }

    private Page<PumpUpTest> find(@Nullable Long compressor, boolean unreviewed, PageRequest request) {
        if (unreviewed) {
            return tests.findUnreviewed(compressor == null ? 0 : compressor, request);
        }
        return compressor == null
                ? tests.findAllByOrderByPerformedAtDescIdDesc(request)
                : tests.findByCompressorIdOrderByPerformedAtDescIdDesc(compressor, request);
    }

    private static String href(@Nullable Long compressor, boolean unreviewed) {
        String asked = Stream.of(
                        compressor == null ? "" : "compressor=" + compressor, unreviewed ? "unreviewed=true" : "")
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("&"));
        return asked.isEmpty() ? "/tests" : "/tests?" + asked;
    }

    private List<TestRow> rows(List<PumpUpTest> found, ResultWords words) {
        List<Long> ids = found.stream().map(PumpUpTest::id).toList();
        Map<Long, StoredResult> stored =
                results.ofTests(ids).stream().collect(Collectors.toMap(StoredResult::testId, result -> result));
        Map<Long, String> reviewers = reviews.findByTestIdIn(ids).stream()
                .collect(Collectors.toMap(TestReview::testId, TestReview::reviewedBy));
        return found.stream()
                .map(test -> TestRow.of(test, stored.get(test.id()), reviewers.get(test.id()), words))
                .toList();
    }

    @GetMapping("/tests/{id}")
    @Transactional(readOnly = true)
    public String show(@PathVariable long id, UnitSet units, Locale locale, Model model) {
        PumpUpTest test = tests.findById(id).orElseThrow(() -> new NoSuchRecord("test " + id));
        model.addAttribute("test", views.view(test, units, locale));
        parts.orderedStream().forEach(part -> model.addAttribute(part.attribute(), part.of(test, units)));
        return "tests/show";
    }
}
