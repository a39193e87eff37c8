# SPDX-License-Identifier: Apache-2.0
"""Which Debian 12 packages give what a build asks for (an empty list: every Debian has it)."""

BASE, QML = ["qt6-base-dev"], ["qt6-declarative-dev"]

QT_COMPONENTS = {
    **{name: BASE for name in ("Concurrent", "Core", "Gui", "Network", "OpenGL", "Sql", "Test", "Widgets")},
    **{name: QML for name in ("Qml", "QmlIntegration", "QmlModels", "Quick", "QuickControls2", "QuickTest")},
    "LinguistTools": ["qt6-tools-dev", "qt6-tools-dev-tools", "qt6-l10n-tools"],
    "Multimedia": ["qt6-multimedia-dev"],
    "Positioning": ["qt6-positioning-dev"],
    "Sensors": ["qt6-sensors-dev"],
    "Svg": ["qt6-svg-dev"],
}

CMAKE_PACKAGES = {
    "CLI11": ["libcli11-dev"],
    "EXPAT": ["libexpat1-dev"],
    "GeographicLib": ["libgeographiclib-dev"],
    "ICU": ["libicu-dev"],
    "JPEG": ["libjpeg62-turbo-dev"],
    "PNG": ["libpng-dev"],
    "PkgConfig": ["pkg-config"],
    "Python3": ["python3"],
    "SQLite3": ["libsqlite3-dev"],
    "Threads": ["g++"],
    "doctest": ["doctest-dev"],
    "nlohmann_json": ["nlohmann-json3-dev"],
}

PKG_CONFIG = {
    "expat": ["libexpat1-dev"],
    "geographiclib": ["libgeographiclib-dev"],
    "libexif": ["libexif-dev"],
    "libical": ["libical-dev"],
    "libjpeg": ["libjpeg62-turbo-dev"],
    "libpng": ["libpng-dev"],
    "libsecret-1": ["libsecret-1-dev"],
    "libqrencode": ["libqrencode-dev"],
    "libsodium": ["libsodium-dev"],
    "libzstd": ["libzstd-dev"],
    "libzip": ["libzip-dev"],
    "sqlite3": ["libsqlite3-dev"],
    "zxing": ["libzxing-dev"],
}

PROGRAMS = {
    "rsvg-convert": ["librsvg2-bin"],
    "node": ["nodejs"],
    "GeodSolve": ["geographiclib-tools"],
    "Rscript": ["r-base-core", "r-cran-survival"],
    "b2sum": [],
    "bash": [],
    "ccache": ["ccache"],
    "chromedriver": ["chromium-driver"],
    "chromium": ["chromium"],
    "clang++": ["clang"],
    "clang-format": ["clang-format"],
    "clang-tidy": ["clang-tidy"],
    "dbus-run-session": ["dbus-daemon"],
    "exiftool": ["libimage-exiftool-perl"],
    "geod": ["proj-bin"],
    "git": ["git"],
    "gnome-keyring-daemon": ["gnome-keyring"],
    "nm": ["g++"],
    "pdftotext": ["poppler-utils"],
    "python3": ["python3"],
    "secret-tool": ["libsecret-tools"],
    "shellcheck": ["shellcheck"],
    "units": ["units"],
    "zbarimg": ["zbar-tools"],
}

QML_MODULES = {
    "Qt.labs.folderlistmodel": ["qml6-module-qt-labs-folderlistmodel"],
    "QtMultimedia": ["qml6-module-qtmultimedia"],
    "QtPositioning": ["qml6-module-qtpositioning"],
    "QtQml": ["qml6-module-qtqml"],
    "QtQml.Models": ["qml6-module-qtqml-models"],
    "QtQuick": ["qml6-module-qtquick", "qml6-module-qtqml", "qml6-module-qtqml-models"],
    "QtQuick.Controls": ["qml6-module-qtquick-controls"],
    "QtQuick.Controls.Basic": ["qml6-module-qtquick-controls"],
    "QtQuick.Dialogs": ["qml6-module-qtquick-dialogs"],
    "QtQuick.Layouts": ["qml6-module-qtquick-layouts"],
    "QtQuick.Shapes": ["qml6-module-qtquick-shapes"],
    "QtQuick.Templates": ["qml6-module-qtquick-templates"],
    "QtQuick.Window": ["qml6-module-qtquick-window"],
    "QtTest": ["qml6-module-qttest"],
}
