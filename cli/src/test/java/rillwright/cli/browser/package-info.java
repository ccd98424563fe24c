/** Pages as a browser shows and prints them: Debian's Chromium, without a window. */
package rillwright.cli.browser;
