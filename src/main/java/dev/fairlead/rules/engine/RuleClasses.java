package dev.fairlead.rules.engine;

import dev.fairlead.rules.catalogue.RulebaseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;

/**
 * Defines the classes of edited rules. They come before classes of the same name on the class path: the engine names a
 * class by its package, so an edited file yields the names that the built-in one has.
 */
final class RuleClasses extends ClassLoader {
    private final Map<String, byte[]> byFile = new HashMap<>();

    RuleClasses(List<CompiledRules> compiled) {
        super("rules", RuleClasses.class.getClassLoader());
        compiled.forEach(c -> byFile.putAll(c.classes()));
    }

    /** The rules that the class of that name holds. */
    Model model(String name) {
        try {
            return (Model) loadClass(name).getConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new RulebaseException(List.of("compiled rules cannot be loaded (" + e + ")"));
        }
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        synchronized (getClassLoadingLock(name)) {
            byte[] bytes = byFile.get(name.replace('.', '/') + ".class");
            if (bytes == null) {
                return super.loadClass(name, resolve);
            }
            Class<?> known = findLoadedClass(name);
            return known != null ? known : defineClass(name, bytes, 0, bytes.length);
        }
    }
}
