package rillwright.cli.browser;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Gives tests one and the same browser, closed after the last of them. */
final class OneBrowser implements ParameterResolver {
  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
    return parameter.getParameter().getType() == Browser.class;
  }

  @Override
  public Browser resolveParameter(ParameterContext parameter, ExtensionContext test) {
    return test.getRoot()
        .getStore(Namespace.create(OneBrowser.class))
        .getOrComputeIfAbsent("browser", it -> Browser.open(), Browser.class);
  }
}
