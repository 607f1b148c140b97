"""Prints pages of an address in WebKitGTK to files, as its print window does: the driver of WebKit has no command for it.

Reads one job as JSON from its first argument:
  open: the address to load; steps: [expression to wait for, script to run then], one after the other;
  prints: [{file, paper: "iso_a4" | "na_letter", lying, marginMm}]
"""

import json
import os
import sys

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import GLib, Gtk, WebKit2  # noqa: E402

job = json.loads(sys.argv[1])
window = Gtk.OffscreenWindow()
window.set_default_size(1024, 768)
view = WebKit2.WebView()
window.add(view)
window.show_all()
steps = list(job["steps"])
prints = list(job["prints"])


def leave(sentence):
    print(sentence, file=sys.stderr)
    sys.stderr.flush()
    os._exit(1)


def print_next(*_):
    if not prints:
        Gtk.main_quit()
        return
    wanted = prints.pop(0)
    size = Gtk.PaperSize.new(wanted["paper"])
    orientation = Gtk.PageOrientation.LANDSCAPE if wanted["lying"] else Gtk.PageOrientation.PORTRAIT
    page = Gtk.PageSetup()
    page.set_paper_size(size)
    page.set_orientation(orientation)
    for edge in ("top", "bottom", "left", "right"):
        getattr(page, f"set_{edge}_margin")(wanted["marginMm"], Gtk.Unit.MM)
    settings = Gtk.PrintSettings()
    settings.set_printer("Print to File")
    settings.set(Gtk.PRINT_SETTINGS_OUTPUT_URI, f"file://{wanted['file']}")
    settings.set(Gtk.PRINT_SETTINGS_OUTPUT_FILE_FORMAT, "pdf")
    settings.set_paper_size(size)
    settings.set_orientation(orientation)
    operation = WebKit2.PrintOperation.new(view)
    operation.set_page_setup(page)
    operation.set_print_settings(settings)
    operation.connect("finished", print_next)
    operation.connect("failed", lambda _, error: leave(f"WebKit did not print: {error.message}"))
    operation.print_()


def asked(script, then):
    def answered(_, result):
        try:
            then(view.evaluate_javascript_finish(result).to_boolean())
        except GLib.Error as error:
            leave(f"The page refused a script: {error.message}")

    view.evaluate_javascript(script, -1, None, None, None, answered)


def step_done(_):
    steps.pop(0)
    GLib.timeout_add(200, look if steps else lambda: print_next() and False)


def when_ready(ready):
    if ready:
        asked(f"{steps[0][1]}; true", step_done)
    else:
        GLib.timeout_add(50, look)


def look():
    asked(f"Boolean({steps[0][0]})", when_ready)
    return False


def loaded(_, event):
    # A script may move on within the page, which counts as loading as well.
    if event == WebKit2.LoadEvent.FINISHED:
        view.disconnect(listening)
        look()


listening = view.connect("load-changed", loaded)
GLib.timeout_add_seconds(150, lambda: leave("WebKit did not get ready in time."))
view.load_uri(job["open"])
Gtk.main()
