// SPDX-License-Identifier: Apache-2.0
// Drawing each page once for each combination.
#include "screens.hpp"

#include <array>

#include <QDir>
#include <QImage>
#include <QQuickWindow>

#include "data/embedded.hpp"
#include "pages.hpp"
#include "settled.hpp"
#include "wiring.hpp"

namespace snugwalk {
namespace {

constexpr std::array sizes = {QSize(360, 740), QSize(412, 892), QSize(1280, 800), QSize(1024, 768),
                              QSize(1920, 1080)};

Error failure(const QString &what, const QString &where)
{
    return {Errc::Io, what.toStdString(), where.toStdString(), "make room, and try once more"};
}

Status drawPage(Wiring &wiring, const QString &page, const QString &file)
{
    if (!openPage(wiring, page))
        return failure(QStringLiteral("the page never stood still"), page);
    const QImage picture = wiring.window().grabWindow();
    if (picture.isNull() || !picture.save(file))
        return failure(QStringLiteral("the picture cannot be written"), file);
    return done();
}

} // namespace

Status drawScreens(Wiring &wiring, const QString &folder, const QString &only)
{
    if (!QDir().mkpath(folder))
        return failure(QStringLiteral("the folder cannot be made"), folder);
    if (!openSomeWalk(wiring))
        return failure(QStringLiteral("the app never stood still"), folder);
    for (const Language &language : productLanguages()) {
        wiring.session().setLanguage(QString::fromStdString(language.slug));
        for (const char *theme : {"day", "night"}) {
            wiring.session().setTheme(QLatin1String(theme));
            for (const QSize &size : sizes) {
                wiring.window().resize(size);
                for (const QString &page : pageNames()) {
                    if (!page.startsWith(only))
                        continue;
                    const QString name =
                        QStringLiteral("%1-%2x%3-%4-%5.png")
                            .arg(QString(page).replace(u'/', u'_'))
                            .arg(size.width())
                            .arg(size.height())
                            .arg(QLatin1String(theme), QString::fromStdString(language.slug));
                    SNUG_TRY(drawPage(wiring, page, QDir(folder).filePath(name)));
                }
            }
        }
    }
    return done();
}

} // namespace snugwalk
