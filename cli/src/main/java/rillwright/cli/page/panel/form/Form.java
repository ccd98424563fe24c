package rillwright.cli.page.panel.form;

import java.util.List;
import rillwright.cli.page.html.Html;

/** Fields of panels' forms, each with its label. */
public final class Form {
  private final String panel;
  private final Html html;

  /** Of a panel. */
  public Form(Panel panel, Html html) {
    this.panel = panel.name();
    this.html = html;
  }

  private String id(String name) {
    return "panel-" + panel + "-" + name;
  }

  private void label(String name, String label) {
    html.open("label", "for", id(name)).text(label).close();
  }

  /** One of several words. */
  public void choice(String name, String label, List<String> choices) {
    label(name, label);
    html.open("select", "id", id(name), "name", name);
    choices.forEach(choice -> html.leaf("option", choice));
    html.close();
  }

  /** A text. */
  public void text(String name, String label, String usual) {
    label(name, label);
    html.empty("input", "id", id(name), "name", name, "value", usual, "autocomplete", "off");
  }

  /** Yes or no. */
  public void tick(String name, String label) {
    html.open("span", "class", "tick");
    html.empty("input", "type", "checkbox", "id", id(name), "name", name, "value", "yes");
    label(name, label);
    html.close();
  }

  /** Whether it is asked in every condition of the site. */
  public void conditions() {
    tick(Filled.CONDITIONS, "in every condition: autumn, cold, low pond");
  }

  /** A button that makes changes, each as {@code --set} takes it. */
  public static void apply(Html html, String words, List<String> changes) {
    html.leaf(
        "button",
        words,
        "type",
        "button",
        "data-do",
        "set-all",
        "data-value",
        String.join("\t", changes));
  }
}
