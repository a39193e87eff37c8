# SPDX-License-Identifier: Apache-2.0
"""The report's web page used in Chromium: pairs pressed, a photo opened, printed; no error, no request."""
import base64
import json
import os
import re
import subprocess
import sys
import tempfile

from selenium import webdriver
from selenium.webdriver.chrome.options import Options
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys

from command_line import acted, log_rivet
from program import Failed, Program, check

NOW = "2026-11-24T08:10:00+13:00"  # after the walk of command_line.py


def browser(chromium, driver, folder, script=True):
    options = Options()
    options.binary_location = chromium
    for word in ("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
                 "--disable-background-networking", "--no-first-run", "--window-size=412,892",
                 f"--user-data-dir={folder}"):
        options.add_argument(word)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL", "performance": "ALL"})
    if not script:
        options.add_experimental_option("prefs", {"profile.managed_default_content_settings.javascript": 2})
    return webdriver.Chrome(service=Service(driver), options=options)


def requests_of(page):
    """Addresses that the page's own frame asked for."""
    found = []
    for line in page.get_log("performance"):
        message = json.loads(line["message"])["message"]
        if message["method"] == "Network.requestWillBeSent":
            found.append(message["params"]["request"]["url"])
    return found


def seen(element):
    return element.value_of_css_property("visibility") == "visible" and element.is_displayed()


def pair_is_pressed(page):
    pair = page.find_element(By.CSS_SELECTOR, ".pair.both")
    then, now = pair.find_element(By.CSS_SELECTOR, ".then"), pair.find_element(By.CSS_SELECTOR, ".now")
    button = pair.find_element(By.TAG_NAME, "button")
    check(button.is_displayed() and button.text == "show then", f"the button says {button.text!r}")
    check(seen(now) and not seen(then), "now is not what is seen first")
    check(abs(then.rect["x"] - now.rect["x"]) < 1 and abs(then.rect["y"] - now.rect["y"]) < 1,
          "then does not lie where now lies")
    button.click()
    check(seen(then) and not seen(now), "a press does not show then")
    check(button.text == "show now", f"then the button says {button.text!r}")
    button.send_keys(Keys.ENTER)
    check(seen(now) and not seen(then), "the keyboard does not bring now back")
    button.send_keys(Keys.SPACE)
    check(seen(then), "the space bar does nothing")
    pair.find_element(By.CSS_SELECTOR, ".two").click()
    check(seen(now), "a press on the picture does nothing")


def photo_opens(page):
    photo = page.find_element(By.CSS_SELECTOR, ".photos .photo")
    check(photo.accessible_name != "" and photo.aria_role == "button", "the photo has no name or no role")
    small = photo.find_element(By.TAG_NAME, "img").rect["width"]
    photo.click()
    large = photo.find_element(By.TAG_NAME, "img").rect["width"]
    check(photo.get_attribute("aria-expanded") == "true" and large > small, f"{small} wide, opened {large}")
    photo.send_keys(Keys.ESCAPE)
    check(photo.get_attribute("aria-expanded") == "false", "Escape does not close it")
    photo.send_keys(Keys.ENTER)
    check(photo.get_attribute("aria-expanded") == "true", "Enter does not open it")
    photo.click()


def every_photo_shows(page):
    broken = page.execute_script(
        "return [...document.images].filter(one => !one.complete || one.naturalWidth === 0).length")
    whole = page.execute_script("return document.images.length")
    check(whole >= 2 and broken == 0, f"{broken} of {whole} photos do not show")


def nothing_leaves_sideways(page):
    for width in (360, 412, 1280):
        page.set_window_size(width, 892)
        wide = page.execute_script("return [document.documentElement.scrollWidth, document.documentElement.clientWidth]")
        check(wide[0] <= wide[1], f"at {width} the page is {wide[0]} wide in {wide[1]}")


def contrast(one, other):
    """WCAG 2.2, relative luminance and contrast ratio."""
    def light(colour):
        parts = [int(n) / 255 for n in re.findall(r"\d+", colour)[:3]]
        r, g, b = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
        return 0.2126 * r + 0.7152 * g + 0.0722 * b
    high, low = sorted((light(one), light(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def words_can_be_read(page):
    pairs = page.execute_script("""
        const out = new Set();
        for (const one of document.querySelectorAll('h1,h2,h3,p,td,th,li,figcaption,button,span')) {
            let up = one;
            while (up && getComputedStyle(up).backgroundColor === 'rgba(0, 0, 0, 0)') up = up.parentElement;
            out.add(getComputedStyle(one).color + '|' + (up ? getComputedStyle(up).backgroundColor : 'rgb(255, 255, 255)'));
        }
        return [...out];""")
    check(len(pairs) >= 2, f"only {pairs}")
    for pair in pairs:
        ink, paper = pair.split("|")
        check(contrast(ink, paper) >= 4.5, f"{ink} on {paper}: {contrast(ink, paper):.1f}:1")


def prints(page, folder, footer, name):
    """Chromium's own PDF, read by poppler: the foot on each page, pairs side by side, no button."""
    file = os.path.join(folder, name + ".pdf")
    with open(file, "wb") as out:
        out.write(base64.b64decode(page.print_page()))
    pages = subprocess.run(["pdftotext", file, "-"], check=True, capture_output=True,
                           text=True).stdout.split("\f")[:-1]
    check(len(pages) >= 2, f"{len(pages)} pages")
    for number, text in enumerate(pages, 1):
        flat = " ".join(text.split())
        check(footer in flat, f"page {number} has no foot: {flat[-300:]}")
        check(f"page {number} of {len(pages)}" in flat, f"page {number} has no number")
        check("show then" not in flat, f"page {number} prints a button")
    pictures = subprocess.run(["pdfimages", "-list", file], check=True, capture_output=True, text=True).stdout
    check(pictures.count("\n") - 2 >= 2, f"pictures printed:\n{pictures}")


def without_script(chromium, driver, folder, address):
    page = browser(chromium, driver, os.path.join(folder, "plain"), script=False)
    try:
        page.get(address)
        pair = page.find_element(By.CSS_SELECTOR, ".pair.both")
        then, now = pair.find_element(By.CSS_SELECTOR, ".then"), pair.find_element(By.CSS_SELECTOR, ".now")
        check(seen(then) and seen(now) and then.rect["x"] + then.rect["width"] <= now.rect["x"] + 1,
              "without script the pair is not side by side")
        check(not pair.find_element(By.TAG_NAME, "button").is_displayed(), "a button that does nothing is shown")
    finally:
        page.quit()


def main(path, source, chromium, driver):
    with tempfile.TemporaryDirectory() as folder:
        program = Program(path, folder)
        program.run("demo", "--from", os.path.join(source, "demo-rig"))
        acted(program, "walk", "start", "full_round")
        log_rivet(program, source)  # a photo then, and now one more
        acted(program, "walk", "finish")
        file = os.path.join(folder, "walk.html")
        program.run("--at", NOW, "report", "--kind", "then_and_now", "--out", os.path.join(folder, "pairs.html"))
        program.run("--at", NOW, "report", "--out", file)
        page = browser(chromium, driver, os.path.join(folder, "profile"))
        try:
            for name in ("pairs", "walk"):
                address = "file://" + os.path.join(folder, name + ".html")
                page.get(address)
                check(page.find_element(By.TAG_NAME, "html").get_attribute("lang") == "en", "no language")
                nothing_leaves_sideways(page)
                words_can_be_read(page)
                every_photo_shows(page)
                pair_is_pressed(page)
                if name == "walk":
                    photo_opens(page)
                footer = " ".join(page.find_element(By.TAG_NAME, "footer").get_attribute("textContent").split())
                prints(page, folder, footer, name)
                asked = [url for url in requests_of(page) if not url.startswith(("data:", "chrome:", address))]
                check(not asked, f"it asked for {asked}")
                told = [line for line in page.get_log("browser")]
                check(not told, f"the console says {told}")
        finally:
            page.quit()
        without_script(chromium, driver, folder, "file://" + os.path.join(folder, "pairs.html"))
    print("web pages: pressed, opened, printed, nothing fetched")



if __name__ == "__main__":
    try:
        main(*sys.argv[1:])
    except Failed as failed:
        print(f"report_page: {failed}", file=sys.stderr)
        sys.exit(1)
