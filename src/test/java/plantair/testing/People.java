package plantair.testing;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import jakarta.servlet.http.Cookie;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcBuilderCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.AuthorityUtils;
import plantair.account.Role;
import plantair.account.SignedIn;

/**
 * Who is signed in during a test: Ann, an administrator, unless the test says otherwise. There is an account for each
 * role, all with one password; {@link Database#wipe()} brings them back.
 */
@TestConfiguration(proxyBeanMethods = false)
public class People {

    /** The password of all of them, long enough and not guessed by a list. */
    public static final String PASSWORD = "brass kettle under fog 61";

    /** {@link #PASSWORD}, hashed at the least strength. */
    static final String HASH = "{bcrypt}$2a$04$l0xftBtscCIDvNVKxDGah.y6.KShKsLyGchUxBFjpDfy19EzS.OBC";

    /** A property that makes hashes quick, since they prove nothing here. */
    static final String QUICK_HASH = "plantair.bcrypt-strength=4";

    private static final String TOKEN = "00000000-0000-0000-0000-000000000001";

    /** One of each role; the first is signed in where nothing is said. */
    public static final List<SignedIn> ALL = List.of(
            person(1, "Ann", Role.ADMINISTRATOR),
            person(2, "Bo", Role.MANAGER),
            person(3, "Cy", Role.TECHNICIAN),
            person(4, "Dee", Role.AUDITOR));

    public static final SignedIn ANN = ALL.get(0);

    private static SignedIn person(long id, String name, Role role) {
        return new SignedIn(id, name.toLowerCase(Locale.ROOT), name, role, 0, false, FixedClock.NOW);
    }

    /** What a program sends to be let in as Ann. */
    public static String basic() {
        byte[] both = (ANN.username() + ":" + PASSWORD).getBytes(StandardCharsets.UTF_8);
        return "Basic " + Base64.getEncoder().encodeToString(both);
    }

    /** The person of that role. */
    public static SignedIn of(Role role) {
        return ALL.get(role.ordinal());
    }

    /** The proof that a request of this person carries. */
    public static Authentication proof(SignedIn person) {
        return UsernamePasswordAuthenticationToken.authenticated(
                person, null, AuthorityUtils.createAuthorityList("ROLE_" + person.role()));
    }

    /**
     * Gives a request the token that a form has, and its cookie. The one of Spring Security's own tests would put another
     * store of tokens into the running server.
     */
    private static MockHttpServletRequest withToken(MockHttpServletRequest request) {
        if (!request.getMethod().equals("GET")) {
            Cookie[] sent = request.getCookies() == null ? new Cookie[0] : request.getCookies();
            Cookie[] all = Arrays.copyOf(sent, sent.length + 1);
            all[sent.length] = new Cookie("csrf", TOKEN);
            request.setCookies(all);
            request.addParameter("_csrf", masked());
        }
        return request;
    }

    /** As a page shows it: a mask, of zeros here, and the token under it. */
    private static String masked() {
        byte[] maskAndToken = new byte[2 * TOKEN.length()];
        System.arraycopy(TOKEN.getBytes(StandardCharsets.US_ASCII), 0, maskAndToken, TOKEN.length(), TOKEN.length());
        return Base64.getUrlEncoder().encodeToString(maskAndToken);
    }

    @Bean
    MockMvcBuilderCustomizer annIsSignedIn() {
        return builder ->
                builder.defaultRequest(get("/").with(authentication(proof(ANN))).with(People::withToken));
    }
}
