# SPDX-License-Identifier: Apache-2.0
"""What a desktop, a store and two kinds of phone read about the app: checked by the readers that their makers wrote, and
against what the sources use. A permission that nothing needs is a fault, as is a need without its permission.

Sources: Desktop Entry Specification 1.5 by desktop-file-validate; AppStream 1.0 by appstreamcli; Android and Apple names
of permissions and keys (from memory).

usage: platforms.py ROOT BUILD"""
import glob
import json
import os
import plistlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml

from PIL import Image

ANDROID = "{http://schemas.android.com/apk/res/android}"
# a name in a source -> what Android and Apple want for it
NEEDS = {
    r"\bQCamera\b": ({"CAMERA"}, {"NSCameraUsageDescription"}),
    r"\bQGeoPositionInfoSource\b": ({"ACCESS_COARSE_LOCATION", "ACCESS_FINE_LOCATION"},
                                    {"NSLocationWhenInUseUsageDescription"}),
    r"\bQAccelerometer\b": (set(), {"NSMotionUsageDescription"}),
    r"\bQNetworkAccessManager\b": ({"INTERNET"}, set()),
    r"\bandroid/os/Vibrator\b": ({"VIBRATE"}, set()),
    r"\b(QAudioSource|QMediaRecorder|QAudioInput)\b": ({"RECORD_AUDIO"}, {"NSMicrophoneUsageDescription"}),
}


class Checks:
    def __init__(self):
        self.count, self.faults = 0, []

    def want(self, holds, words):
        self.count += 1
        if not holds:
            self.faults.append(words)

    def run(self, *command):
        done = subprocess.run(command, capture_output=True, text=True)
        self.want(done.returncode == 0, f"{command[0]}: {done.stdout}{done.stderr}")


def sources(root):
    for folder in ("platform", "qml"):
        for path in glob.glob(os.path.join(root, folder, "**", "*.[ch]pp"), recursive=True):
            with open(path, encoding="utf-8") as file:
                yield file.read()


def needs_of(root):
    text = "\n".join(sources(root))
    android, apple = set(), set()
    for name, (permissions, keys) in NEEDS.items():
        if re.search(name, text):
            android |= permissions
            apple |= keys
    return android, apple


def check_linux(checks, root, build):
    folder = os.path.join(root, "platform", "linux")
    entry = os.path.join(folder, "org.snugwalk.Snugwalk.desktop")
    checks.run("desktop-file-validate", entry)
    checks.run("appstreamcli", "validate", "--no-net",
               os.path.join(build, "platform", "linux", "org.snugwalk.Snugwalk.metainfo.xml"))
    with open(entry, encoding="utf-8") as file:
        keys = dict(line.strip().split("=", 1) for line in file if "=" in line)
    checks.want(os.path.exists(os.path.join(folder, keys["Icon"] + ".svg")), "the icon that the entry names is there")
    checks.want(os.path.exists(os.path.join(build, "bin", keys["Exec"])), "the program that the entry names is built")
    for language in languages(root) - {"en"}:
        checks.want(f"Comment[{language}]" in keys, f"the entry has no comment in {language}")


def languages(root):
    return {re.search(r"_(\w+)\.ts$", path).group(1)
            for path in glob.glob(os.path.join(root, "translations", "*.ts"))}


def check_android(checks, root, wanted):
    folder = os.path.join(root, "platform", "android")
    manifest = xml.parse(os.path.join(folder, "AndroidManifest.xml")).getroot()
    asked = {item.get(ANDROID + "name").rsplit(".", 1)[1] for item in manifest.iter("uses-permission")}
    checks.want(asked == wanted, f"permissions asked for {sorted(asked)}, used {sorted(wanted)}")
    for feature in manifest.iter("uses-feature"):
        name = feature.get(ANDROID + "name")
        checks.want(name is None or feature.get(ANDROID + "required") == "false", f"{name} keeps phones without it out")
    activity = manifest.find("application/activity")
    checks.want(activity.get(ANDROID + "exported") == "true", "Android 12 wants `exported` said")
    for item in manifest.iter():
        for value in item.attrib.values():
            for kind, name in re.findall(r"^@(mipmap|drawable|string)/(\w+)$", value):
                checks.want(has_resource(folder, kind, name), f"no {kind} {name}")
    for path in glob.glob(os.path.join(folder, "res", "*", "*.xml")):
        xml.parse(path)
        checks.count += 1


def has_resource(folder, kind, name):
    if kind == "string":
        values = xml.parse(os.path.join(folder, "res", "values", "strings.xml")).getroot()
        return any(item.get("name") == name for item in values)
    return bool(glob.glob(os.path.join(folder, "res", kind + "*", name + ".xml")))


def check_apple(checks, root, wanted):
    folder = os.path.join(root, "platform", "ios")
    with open(os.path.join(folder, "Info.plist.in"), "rb") as file:
        keys = plistlib.load(file)
    asked = {key for key in keys if key.endswith("UsageDescription")}
    checks.want(asked == wanted, f"reasons given for {sorted(asked)}, used {sorted(wanted)}")
    checks.want(all(len(keys[key]) > 20 for key in asked), "a reason is a sentence")
    checks.want(set(keys["CFBundleLocalizations"]) == languages(root), "the languages are those of translations/")
    catalogue = os.path.join(folder, "Images.xcassets", "AppIcon.appiconset", "Contents.json")
    with open(catalogue, encoding="utf-8") as file:
        image = json.load(file)["images"][0]
    with tempfile.TemporaryDirectory() as scratch:
        drawn = os.path.join(scratch, image["filename"])
        checks.run("bash", os.path.join(folder, "make_icon.sh"), drawn)
        with Image.open(drawn) as icon:
            checks.want("x".join(map(str, icon.size)) == image["size"], f"icon of {icon.size}")
            alpha = icon.convert("RGBA").getchannel("A").getextrema()
            checks.want(alpha == (255, 255), "an icon without transparency")
            checks.want(len(icon.convert("RGB").getcolors(1 << 24)) > 3, "an icon with a drawing on it")


def main():
    root, build = sys.argv[1:]
    checks = Checks()
    android, apple = needs_of(root)
    check_linux(checks, root, build)
    check_android(checks, root, android)
    check_apple(checks, root, apple)
    for fault in checks.faults:
        print("FAULT", fault)
    print(f"{checks.count} looked at, {len(checks.faults)} faults")
    return 1 if checks.faults else 0


sys.exit(main())
