package plantair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.beans.BeanUtils;
import org.springframework.core.MethodParameter;
import org.springframework.http.HttpMethod;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;

/** A mapped address with one method that it takes, and what its handler reads. */
record Address(HttpMethod method, String pattern, HandlerMethod handler) {

    static final Comparator<Address> ORDER = Comparator.comparing(Address::pattern)
            .thenComparing(address -> address.method().name());

    private static final Pattern VARIABLE = Pattern.compile("\\{[^}]*}");

    int variables() {
        return (int) VARIABLE.matcher(pattern).results().count();
    }

    /** The pattern with the variables renamed, so that any text may stand for each. */
    String template() {
        return VARIABLE.matcher(pattern).replaceAll("{v}");
    }

    boolean takes(String path) {
        String quoted =
                "\\Q" + Matcher.quoteReplacement(VARIABLE.matcher(pattern).replaceAll("\\\\E[^/]+\\\\Q")) + "\\E";
        return path.matches(quoted.replace("\\\\", "\\"));
    }

    /** Names of parameters and of form fields. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        for (MethodParameter parameter : handler.getMethodParameters()) {
            parameter.initParameterNameDiscovery(new org.springframework.core.DefaultParameterNameDiscoverer());
            if (parameter.hasParameterAnnotation(RequestParam.class)) {
                names.add(String.valueOf(parameter.getParameterName()));
            } else if (parameter.hasParameterAnnotation(ModelAttribute.class)) {
                for (var property : BeanUtils.getPropertyDescriptors(parameter.getParameterType())) {
                    names.add(property.getName());
                }
            }
        }
        return names;
    }

    @Override
    public String toString() {
        return method + " " + pattern;
    }
}
