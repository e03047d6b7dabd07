package quarterlight;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.nio.file.CopyOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The allowed directions between packages, and the rules of the code that a machine can check. */
class ArchitectureTest {
    /** Every rule of this class as a test of its own, by plain JUnit: it runs wherever the other tests run. */
    @TestFactory
    List<DynamicTest> everyRuleHolds() {
        JavaClasses program = new ClassFileImporter()
                .withImportOption(location -> !location.contains("/test-classes/"))
                .importPackages(ROOT)
                .that(HAS_ITS_SOURCE_IN_MAIN);
        assertThat(program.contain("quarterlight.Main")).isTrue();
        List<DynamicTest> tests = Arrays.stream(ArchitectureTest.class.getDeclaredFields())
                .filter(field -> field.getType() == ArchRule.class)
                .map(field ->
                        DynamicTest.dynamicTest(field.getName(), () -> ((ArchRule) field.get(null)).check(program)))
                .toList();
        assertThat(tests).hasSizeGreaterThan(15);
        return tests;
    }

    private static final String ROOT = "quarterlight";
    private static final Path SOURCES = Path.of(System.getProperty("quarterlight.basedir", "."), "src/main/java");

    /** A workbench may compile the tools of the project into the same folder as the program; they are not the program. */
    private static final DescribedPredicate<JavaClass> HAS_ITS_SOURCE_IN_MAIN =
            DescribedPredicate.describe("has its source in src/main/java", type -> {
                Path folder = SOURCES.resolve(type.getPackageName().replace('.', '/'));
                return Files.exists(folder.resolve(
                        type.getSource().flatMap(source -> source.getFileName()).orElse("")));
            });

    private static final String[] VALUES = of("units", "car", "visit", "task");
    private static final String[] FILE = of("file");
    private static final String[] SCIENCE = of(
            "thickness",
            "finish",
            "rust",
            "marks",
            "capture",
            "walk",
            "words",
            "coverage",
            "compare",
            "findings",
            "matters");
    private static final String[] ADAPTERS =
            of("photo", "caption", "diagram", "table", "store", "page", "archive", "settings");
    private static final String[] EDIT = of("edit");
    private static final String[] CLI = of("cli");
    private static final String[] UI = of("ui");

    static final ArchRule VALUES_KNOW_ONLY_VALUES = noClasses()
            .that()
            .resideInAnyPackage(VALUES)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(all(FILE, SCIENCE, ADAPTERS, EDIT, CLI, UI, new String[] {ROOT}))
            .because("what is recorded does not depend on what is made of it");

    static final ArchRule SCIENCE_KNOWS_ONLY_VALUES = noClasses()
            .that()
            .resideInAnyPackage(SCIENCE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(all(FILE, ADAPTERS, EDIT, CLI, UI, new String[] {ROOT}))
            .allowEmptyShould(true)
            .because("the computing core runs without a screen, a database or a clock");

    static final ArchRule LASTING_FILES_KNOW_NOTHING = noClasses()
            .that()
            .resideInAnyPackage(FILE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(all(VALUES, SCIENCE, ADAPTERS, EDIT, CLI, UI, new String[] {ROOT}))
            .because("every adapter writes by it, so it must know none of them");

    static final ArchRule LANGUAGE_KNOWS_NOTHING = noClasses()
            .that()
            .resideInAnyPackage(of("language"))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(all(VALUES, FILE, SCIENCE, ADAPTERS, EDIT, CLI, UI, new String[] {ROOT}))
            .because("every layer speaks by it, so it must know none of them");

    static final ArchRule FILES_ARE_MOVED_IN_ONE_HOME = noClasses()
            .that()
            .resideOutsideOfPackages(FILE)
            .should()
            .callMethod(Files.class, "move", Path.class, Path.class, CopyOption[].class)
            .orShould()
            .callMethod(Files.class, "createTempFile", Path.class, String.class, String.class, FileAttribute[].class)
            .because("a file that appears under its name must last; quarterlight.file.DurableFiles sees to that");

    static final ArchRule ADAPTERS_KNOW_NO_EDITS = noClasses()
            .that()
            .resideInAnyPackage(ADAPTERS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(all(EDIT, CLI, UI, new String[] {ROOT}))
            .because("facts flow from action to edit to store, never back");

    static final ArchRule EDITS_KNOW_NO_SURFACE = noClasses()
            .that()
            .resideInAnyPackage(EDIT)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(all(CLI, UI, new String[] {ROOT}))
            .allowEmptyShould(true)
            .because("an edit is the same for a window and for a command");

    static final ArchRule COMMANDS_KNOW_NO_WINDOW = noClasses()
            .that()
            .resideInAnyPackage(CLI)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(all(UI, new String[] {ROOT}))
            .allowEmptyShould(true)
            .because("the window and the command line do the same work by the same edits, not by each other");

    static final ArchRule WINDOWS_KNOW_NO_COMMAND = noClasses()
            .that()
            .resideInAnyPackage(UI)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(all(CLI, new String[] {ROOT}))
            .allowEmptyShould(true)
            .because("the window and the command line do the same work by the same edits, not by each other");

    static final ArchRule ADAPTERS_STAND_APART = classes()
            .that()
            .resideInAnyPackage(ADAPTERS)
            .should(new ArchCondition<>("use no other adapter, save page -> diagram and archive -> table, page") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    String own = slice(type);
                    type.getDirectDependenciesFromSelf().forEach(d -> {
                        String other = slice(d.getTargetClass());
                        boolean adapter = List.of(ADAPTERS).contains(other + "..");
                        boolean allowed = other.equals(own)
                                || own.equals(ROOT + ".page") && other.equals(ROOT + ".diagram")
                                || own.equals(ROOT + ".archive")
                                        && List.of(ROOT + ".table", ROOT + ".page")
                                                .contains(other);
                        if (adapter && !allowed) {
                            events.add(SimpleConditionEvent.violated(d, d.getDescription()));
                        }
                    });
                }
            })
            .because("each adapter speaks to one outside thing");

    static final ArchRule NO_CYCLES =
            slices().matching("quarterlight.(*)..").should().beFreeOfCycles().because("a cycle makes two packages one");

    static final ArchRule SCREENS_STAND_APART = classes()
            .that()
            .resideInAPackage("quarterlight.ui.*..")
            .should(new ArchCondition<>("use no other screen, save ui.kit and ui.diagram") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    String own = screen(type);
                    type.getDirectDependenciesFromSelf().forEach(d -> {
                        JavaClass target = d.getTargetClass();
                        if (!target.getPackageName().startsWith("quarterlight.ui")) {
                            return;
                        }
                        String other = screen(target);
                        if (!other.equals(own) && !other.equals("kit") && !other.equals("diagram")) {
                            events.add(SimpleConditionEvent.violated(d, d.getDescription()));
                        }
                    });
                }
            })
            .allowEmptyShould(true)
            .because("screens talk only through the open visit");

    static final ArchRule SQL_ONLY_IN_STORE = only("java.sql..", "org.sqlite..").inside("quarterlight.store..");

    static final ArchRule SWING_ONLY_IN_UI = noClasses()
            .that()
            .resideOutsideOfPackages("quarterlight.ui..", ROOT)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..", "com.formdev..", "net.miginfocom..")
            .because("every verb but desk runs without a display");

    static final ArchRule BATIK_ONLY_WHERE_DRAWN = only("org.apache.batik..")
            .inside("quarterlight.diagram..", "quarterlight.page..", "quarterlight.ui.diagram..");

    static final ArchRule METADATA_ONLY_IN_PHOTO = only("com.drew..").inside("quarterlight.photo..");

    static final ArchRule NATIVE_CODE_ONLY_IN_PHOTO = only("org.bytedeco..").inside("quarterlight.photo..");
    static final ArchRule RECOGNIZER_ONLY_IN_SPEECH =
            only("io.github.givimad..").inside("quarterlight.photo.speech..");

    /** What a rule of color finds is painted in the window and nowhere told: no page, table, document or comparison can know of it. */
    static final ArchRule COLOR_RULE_ONLY_IN_ITS_BRUSH =
            only("quarterlight.rust.color..").inside("quarterlight.rust.color..", "quarterlight.ui.rust..");

    static final ArchRule COLOR_SHARE_IS_NEITHER_KEPT_NOR_SHOWN = noClasses()
            .that(DescribedPredicate.describe("are not the brush", type -> !List.of(
                            "quarterlight.rust.color.ColorShare", "quarterlight.ui.rust.draw.ShareWork")
                    .contains(outermost(type))))
            .should()
            .callMethodWhere(DescribedPredicate.describe(
                    "ask how much looks like rust",
                    call -> List.of("share", "pixels").contains(call.getName())
                            && List.of("quarterlight.rust.color.ColorShare", "quarterlight.ui.rust.draw.ShareWork")
                                    .contains(outermost(call.getTargetOwner()))))
            .because("on real photos it is often far off, so it proposes outlines and is no figure");

    static final ArchRule CORE_TOUCHES_NO_OUTSIDE = noClasses()
            .that()
            .resideInAnyPackage(all(VALUES, SCIENCE))
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.awt..", "java.io..", "java.net..", "java.util.logging..")
                    .or(JavaClass.Predicates.assignableTo(Files.class)))
            .because("values in, values out");

    static final ArchRule STATICS_ARE_FINAL = fields().that()
            .areStatic()
            .and(new DescribedPredicate<JavaField>("are not synthetic") {
                @Override
                public boolean test(JavaField field) {
                    return !field.getModifiers().contains(JavaModifier.SYNTHETIC);
                }
            })
            .should()
            .beFinal()
            .because("nothing is global");

    static final ArchRule NO_STANDARD_STREAMS = noClasses()
            .that()
            .resideOutsideOfPackages("quarterlight.cli..", ROOT)
            .should(ACCESS_STANDARD_STREAMS)
            .because("only the command line prints");

    static final ArchRule NO_GENERIC_EXCEPTIONS = noClasses()
            .should()
            .callConstructorWhere(new DescribedPredicate<JavaConstructorCall>("make a nameless exception") {
                @Override
                public boolean test(JavaConstructorCall call) {
                    boolean nameless = call.getTargetOwner().isEquivalentTo(RuntimeException.class)
                            || call.getTargetOwner().isEquivalentTo(Exception.class);
                    boolean ownParent = call.getOriginOwner().isAssignableTo(Throwable.class)
                            && call.getOrigin().isConstructor();
                    return nameless && !ownParent;
                }
            })
            .because("an exception is named for what happened");

    static final ArchRule CLOCKS_ARE_PASSED = noClasses()
            .that()
            .resideOutsideOfPackage(ROOT)
            .should()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .because("time comes in through a java.time.Clock");

    static final ArchRule THREADS_HAVE_ONE_HOME = noClasses()
            .that()
            .resideOutsideOfPackage("quarterlight.task")
            .should()
            .callMethodWhere(new DescribedPredicate<JavaMethodCall>("make or start threads") {
                @Override
                public boolean test(JavaMethodCall call) {
                    return call.getTargetOwner().isEquivalentTo(Executors.class)
                            || call.getTargetOwner().isEquivalentTo(Thread.class)
                                    && call.getName().equals("start");
                }
            })
            .because("background work is quarterlight.task's: it names its threads, ends, and drops what was replaced");

    private record Only(List<String> packages) {
        ArchRule inside(String... homes) {
            return noClasses()
                    .that()
                    .resideOutsideOfPackages(homes)
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(packages.toArray(String[]::new))
                    .because("each library has one home");
        }
    }

    private static Only only(String... packages) {
        return new Only(List.of(packages));
    }

    private static String slice(JavaClass type) {
        String[] parts = type.getPackageName().split("\\.");
        return parts.length > 1 ? parts[0] + "." + parts[1] : parts[0];
    }

    private static String outermost(JavaClass type) {
        return type.getName().split("\\$")[0];
    }

    private static String screen(JavaClass type) {
        String[] parts = type.getPackageName().split("\\.");
        return parts.length > 2 ? parts[2] : "";
    }

    private static String[] of(String... names) {
        return List.of(names).stream().map(name -> ROOT + "." + name + "..").toArray(String[]::new);
    }

    private static String[] all(String[]... groups) {
        List<String> joined = new ArrayList<>();
        for (String[] group : groups) {
            joined.addAll(List.of(group));
        }
        return joined.toArray(String[]::new);
    }
}
