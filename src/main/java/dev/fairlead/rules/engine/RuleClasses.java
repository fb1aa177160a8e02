package dev.fairlead.rules.engine;

import java.util.Map;

/**
 * Defines the classes of edited rules. They come before classes of the same name on the class path: the engine names a
 * class by its package, so an edited file yields the names that the built-in one has.
 */
final class RuleClasses extends ClassLoader {
    private final Map<String, byte[]> byFile;

    RuleClasses(Map<String, byte[]> byFile, ClassLoader parent) {
        super("rules", parent);
        this.byFile = byFile;
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
