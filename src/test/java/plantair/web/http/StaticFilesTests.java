package plantair.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.ApplicationContext;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;
import plantair.testing.OnH2;

/** No link is looked for among the static files: what is kept of each would fill the memory as the records grow. */
@OnH2
final class StaticFilesTests {

    @Autowired
    private ApplicationContext context;

    @Test
    void leavesLinksAsTheyAreWritten() {
        assertThat(context.getBeansOfType(FilterRegistrationBean.class).values())
                .filteredOn(registered -> registered.getFilter() instanceof ResourceUrlEncodingFilter)
                .isNotEmpty()
                .allMatch(registered -> !registered.isEnabled());
        assertThat(context.getBeansOfType(ResourceUrlEncodingFilter.class)).isEmpty();
    }
}
