/**
 * A YAML or JSON file as maps, lists and single values, each with its place. The only package that
 * knows Jackson's streaming parsers. Uses {@code fault} and {@code cli.wording}.
 */
package rillwright.cli.file.tree;
