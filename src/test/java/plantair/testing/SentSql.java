package plantair.testing;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.util.ClassUtils;

/** Writes down every statement that the running application sends to its database, whoever sends it. */
@TestComponent
public final class SentSql implements BeanPostProcessor {

    /**
     * A statement that was sent.
     *
     * @param sql as sent; of some statements sent together, only that it is a batch
     * @param bound how its parameters were set, in order
     */
    public record Sent(String sql, List<Binding> bound) {

        /** The same parameters in another statement. */
        public void bind(PreparedStatement other) throws SQLException {
            for (Binding one : bound) {
                call(other, one.setter(), one.arguments());
            }
        }
    }

    /** How one parameter was set. */
    public record Binding(Method setter, @Nullable Object[] arguments) {}

    private volatile @Nullable Thread watched;
    private final List<Sent> all = Collections.synchronizedList(new ArrayList<>());

    @Override
    public Object postProcessAfterInitialization(Object bean, String name) {
        return bean instanceof DataSource ? watched(bean) : bean;
    }

    /** What this thread sent since the last time that somebody asked; jobs beside it send more. */
    public List<Sent> take() {
        synchronized (all) {
            List<Sent> taken = List.copyOf(all);
            all.clear();
            watched = Thread.currentThread();
            return taken;
        }
    }

    private Object watched(Object dataSource) {
        return proxy(
                dataSource,
                (method, arguments, answer) ->
                        answer instanceof Connection connection ? proxy(connection, this::ofConnection) : answer);
    }

    private @Nullable Object ofConnection(Method method, Object[] arguments, @Nullable Object answer) {
        if (answer instanceof Statement statement) {
            List<Binding> bound = new ArrayList<>();
            String prepared = answer instanceof PreparedStatement ? String.valueOf(arguments[0]) : null;
            return proxy(statement, (called, given, result) -> {
                if (called.getName().startsWith("set") && prepared != null && given.length > 1) {
                    bound.add(new Binding(called, given));
                } else if (called.getName().equals("clearParameters")) {
                    bound.clear();
                } else if (called.getName().startsWith("execute") && Thread.currentThread() == watched) {
                    String plain = given.length == 0 ? "batch" : String.valueOf(given[0]);
                    all.add(new Sent(prepared == null ? plain : prepared, List.copyOf(bound)));
                }
                return result;
            });
        }
        return answer;
    }

    private interface Seen {
        @Nullable
        Object after(Method method, Object[] arguments, @Nullable Object answer);
    }

    private static Object proxy(Object target, Seen seen) {
        return Proxy.newProxyInstance(
                SentSql.class.getClassLoader(),
                ClassUtils.getAllInterfaces(target),
                (proxy, method, arguments) -> seen.after(
                        method, arguments == null ? new Object[0] : arguments, call(target, method, arguments)));
    }

    private static @Nullable Object call(Object target, Method method, Object @Nullable [] arguments)
            throws SQLException {
        try {
            return method.invoke(target, arguments);
        } catch (InvocationTargetException failed) {
            if (failed.getCause() instanceof SQLException refused) {
                throw refused;
            }
            if (failed.getCause() instanceof RuntimeException other) {
                throw other;
            }
            throw new IllegalStateException(failed);
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
