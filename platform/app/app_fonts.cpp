// SPDX-License-Identifier: Apache-2.0
// Loading each face once.
#include "app_fonts.hpp"

#include <QDir>
#include <QFontDatabase>
#include <QGuiApplication>

namespace snugwalk {
namespace {

constexpr const char *fontFolder = ":/qt/qml/Snugwalk/Style/fonts";
constexpr int bodyPixels = 17;

} // namespace

void loadFonts()
{
    for (const QString &name : QDir(QLatin1String(fontFolder)).entryList(QDir::Files)) {
        if (name.endsWith(QStringLiteral(".otf")) || name.endsWith(QStringLiteral(".woff2")))
            QFontDatabase::addApplicationFont(QLatin1String(fontFolder) + u'/' + name);
    }
    QFont font(QStringLiteral("Atkinson Hyperlegible Next"));
    font.setPixelSize(bodyPixels);
    QGuiApplication::setFont(font);
}

} // namespace snugwalk
