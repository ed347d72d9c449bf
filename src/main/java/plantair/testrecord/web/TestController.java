package plantair.testrecord.web;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
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
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.UnitSet;

/** Shows pump-up tests. */
@Controller
class TestController {

    private static final int PAGE_SIZE = 25;

    private final PumpUpTests tests;
    private final StoredResults results;
    private final TestViews views;
    private final ObjectProvider<TestPagePart> parts;

    TestController(PumpUpTests tests, StoredResults results, TestViews views, ObjectProvider<TestPagePart> parts) {
        this.tests = tests;
        this.results = results;
        this.views = views;
        this.parts = parts;
    }

    @GetMapping("/tests")
    @Transactional(readOnly = true)
    public String list(
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(required = false) @Nullable Long compressor,
            UnitSet units,
            Locale locale,
            Model model) {
        PageRequest request = PageRequest.of(Math.max(0, page - 1), PAGE_SIZE);
        Page<PumpUpTest> found = compressor == null
                ? tests.findAllByOrderByPerformedAtDescIdDesc(request)
                : tests.findByCompressorIdOrderByPerformedAtDescIdDesc(compressor, request);
        Map<Long, StoredResult> stored = results
                .ofTests(found.stream().map(PumpUpTest::id).toList())
                .stream()
                .collect(Collectors.toMap(StoredResult::testId, result -> result));
        String href = compressor == null ? "/tests" : "/tests?compressor=" + compressor;
        model.addAttribute("paging", new Paging(href, page, PAGE_SIZE, found.getTotalElements()));
        var words = views.words(units, locale);
        model.addAttribute(
                "rows",
                found.stream()
                        .map(test -> TestRow.of(test, stored.get(test.id()), words))
                        .toList());
        return "tests/list";
    }

    @GetMapping("/tests/{id}")
    @Transactional(readOnly = true)
    public String show(@PathVariable long id, UnitSet units, Locale locale, Model model) {
        PumpUpTest test = tests.findById(id).orElseThrow(() -> new NoSuchRecord("test " + id));
        model.addAttribute("test", views.view(test, units, locale));
        parts.orderedStream().forEach(part -> model.addAttribute(part.attribute(), part.of(test)));
        return "tests/show";
    }
}
