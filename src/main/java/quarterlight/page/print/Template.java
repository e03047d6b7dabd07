package quarterlight.page.print;

import freemarker.core.XHTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.SimpleHash;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quarterlight.diagram.ink.Theme;
import quarterlight.language.Language;
import quarterlight.language.Sentences;
import quarterlight.units.XmlText;

/** Fills a page template; everything typed by people is escaped by the template engine. */
public final class Template {
    /** A thin space is a place to break a line, its narrow sister is not (Unicode Standard Annex 14, classes BA and GL). */
    private static final char THIN = '\u2009';

    private static final char THIN_UNBROKEN = '\u202f';

    /** One for all pages, so that each template is read once. */
    private static final Configuration CONFIGURATION = configuration();

    private static Configuration configuration() {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setClassForTemplateLoading(Template.class, "/quarterlight/page");
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.US);
        configuration.setOutputFormat(XHTMLOutputFormat.INSTANCE);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setNumberFormat("computer");
        configuration.setSharedVariable("say", (TemplateMethodModelEx) Template::said);
        configuration.setSharedVariable("inside", (TemplateMethodModelEx)
                text -> Sentences.within(plain(text.get(0)).toString()));
        configuration.setSharedVariable(
                "language", (TemplateMethodModelEx) none -> Language.inHand().code());
        configuration.setSharedVariable("color", colors(configuration, Theme.LIGHT));
        configuration.setSharedVariable("night", colors(configuration, Theme.DARK));
        return configuration;
    }

    private static SimpleHash colors(Configuration configuration, Theme theme) {
        return new SimpleHash(theme.byName(), configuration.getObjectWrapper());
    }

    /** A sentence by its key, with arguments behind it, as a template asks for it. */
    private static String said(List<?> asked) throws TemplateModelException {
        Object[] arguments = new Object[asked.size() - 1];
        for (int i = 0; i < arguments.length; i++) {
            arguments[i] = plain(asked.get(i + 1));
        }
        return Sentences.say(plain(asked.get(0)).toString(), arguments);
    }

    private static Object plain(Object model) throws TemplateModelException {
        return model instanceof TemplateNumberModel number
                ? number.getAsNumber()
                : ((TemplateScalarModel) model).getAsString();
    }

    public String fill(String name, Map<String, Object> model) {
        try {
            StringWriter out = new StringWriter();
            CONFIGURATION.getTemplate(name).process(model, out);
            return out.toString();
        } catch (IOException e) {
            throw new UncheckedIOException("the template " + name + " cannot be read", e);
        } catch (TemplateException e) {
            throw new IllegalStateException("the template " + name + " is wrong", e);
        }
    }

    /**
     * A page as a document of HTML. A drawing is named there by an attribute of its own; the PDF library asks for the one of pictures. Typed text
     * has its quotes escaped, so it never looks like one.
     */
    public static String html(String page) {
        return "<!DOCTYPE html>\n"
                + XmlText.clean(page)
                        .replace("role=\"img\" alt=", "role=\"img\" aria-label=")
                        .replace(THIN, THIN_UNBROKEN);
    }
}
