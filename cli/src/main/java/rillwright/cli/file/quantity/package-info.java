/**
 * Quantities as people write them ({@code 7 ft 3 in}, {@code 60 ft ± 5 ft}) and what they are
 * worth. Uses {@code curves.unit} and {@code cli.wording}.
 */
package rillwright.cli.file.quantity;
