package plantair.testrecord;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

/** The reviews of tests; they can be added and read, not altered. */
public interface TestReviews extends Repository<TestReview, Long> {

    TestReview saveAndFlush(TestReview review);

    Optional<TestReview> findByTestId(long testId);

    List<TestReview> findByTestIdIn(Collection<Long> testIds);
}
