// SPDX-License-Identifier: Apache-2.0
// Every page of the app over a real logbook, at sizes, themes, languages and scales of text: what a person
// could not read, reach or name. usage: tst_screens BOOK [--all | --third] [--only PAGE] [--shots FOLDER]
// Without --all each page is drawn in settings that show every pair of choices once; with --third in a third
// of those, the next page in another third. With --shots pictures stay, and one sheet of them. BOOK may be
// "-": an empty logbook.
#include <array>
#include <cstdio>
#include <exception>
#include <vector>

#include <QDir>
#include <QGuiApplication>
#include <QPainter>
#include <QQmlContext>
#include <QQmlProperty>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickWindow>

#include "combinations.hpp"
#include "data/embedded.hpp"
#include "message_watch.hpp"
#include "pages.hpp"
#include "pseudo_language.hpp"
#include "scratch_book.hpp"
#include "screen_faults.hpp"
#include "session.hpp"
#include "settled.hpp"
#include "wiring.hpp"

using namespace snugwalk;
using namespace snugwalk::screens;

namespace {

// phone, large phone, tablet upright, tablet across, desktop
const std::array sizes = {QSize(360, 740), QSize(412, 892), QSize(820, 1180), QSize(1280, 800),
                          QSize(1920, 1080)};
const std::array themes = {"day", "night", "sun"};
const std::array scales = {1.0, 2.0};
const std::array hands = {false, true};
const std::array units = {"si", "us"};

enum Factor { Size, Theme, Scale, Tongue, Gloves, Units };

struct Setting {
    QSize size;
    QString theme, language, units;
    double scale;
    bool gloves;
    [[nodiscard]] QString name() const
    {
        return QStringLiteral("%1x%2-%3-%4-%5%6-%7")
            .arg(size.width())
            .arg(size.height())
            .arg(theme, language)
            .arg(scale * 100)
            .arg(gloves ? QStringLiteral("-gloves") : QString(), units);
    }
};

QStringList tongues()
{
    QStringList all;
    for (const Language &one : productLanguages())
        all << QString::fromStdString(one.slug);
    return all << QStringLiteral("long") << QStringLiteral("rtl");
}

Setting settingOf(const Row &row, const QStringList &languages)
{
    return {sizes.at(row[Size]),
            QLatin1String(themes.at(row[Theme])),
            languages[static_cast<int>(row[Tongue])],
            QLatin1String(units.at(row[Units])),
            scales.at(row[Scale]),
            hands.at(row[Gloves])};
}

class Screens {
public:
    Screens(Wiring &app, QString shots) : m_app(app), m_shots(std::move(shots)) {}

    bool draw(const QString &page, const Setting &setting)
    {
        put(setting);
        if (!openPage(m_app, page))
            return tell(page, setting, {QStringLiteral("never stands still")});
        const QImage picture = m_app.window().grabWindow();
        if (!m_shots.isEmpty())
            picture.save(
                QDir(m_shots).filePath(QString(page).replace(u'/', u'_') + u'-' + setting.name() + ".png"));
        // sun is for reading in glare: 7 to 1, as interface papers and WCAG's AAA have it
        const Wanted wanted{setting.gloves ? 64 : 48, setting.theme == QStringLiteral("sun") ? 7.0 : 4.5};
        QStringList faults = faultsOf(m_app.window(), picture, wanted);
        // a layout may take another pass after the first picture: what a person would still see counts
        if (!faults.isEmpty() && waitUntilSettled(m_app.session(), m_app.window()))
            faults = faultsOf(m_app.window(), m_app.window().grabWindow(), wanted);
        return tell(page, setting, faults);
    }

    int drawn = 0;
    int faulty = 0;

private:
    void put(const Setting &setting)
    {
        Session &session = m_app.session();
        session.setTheme(setting.theme);
        session.setGloves(setting.gloves);
        session.setTextScale(setting.scale);
        session.setUnits(setting.units);
        m_app.window().resize(setting.size);
        speak(setting.language);
    }

    void speak(const QString &language)
    {
        if (language == m_language)
            return;
        const bool isPseudo = language.size() > 2;
        m_app.session().setLanguage(isPseudo ? QStringLiteral("es") : language); // said again below
        QCoreApplication::removeTranslator(&m_long);
        QCoreApplication::removeTranslator(&m_mirrored);
        if (isPseudo) {
            QCoreApplication::installTranslator(language == QStringLiteral("rtl") ? &m_mirrored : &m_long);
            m_app.session().setLanguage(QStringLiteral("en"));
        }
        for (QQuickItem *item : m_app.window().contentItem()->childItems())
            QQmlProperty(item, QStringLiteral("LayoutMirroring.enabled"), qmlContext(item))
                .write(language == QStringLiteral("rtl"));
        m_language = language;
    }

    bool tell(const QString &page, const Setting &setting, QStringList faults)
    {
        ++drawn;
        faults.removeDuplicates();
        for (const QString &fault : faults)
            std::printf("%s %s: %s\n", qUtf8Printable(page), qUtf8Printable(setting.name()),
                        qUtf8Printable(fault));
        faulty += faults.isEmpty() ? 0 : 1;
        return faults.isEmpty();
    }

    Wiring &m_app;
    QString m_shots;
    QString m_language;
    PseudoLanguage m_long{PseudoLanguage::Kind::Long};
    PseudoLanguage m_mirrored{PseudoLanguage::Kind::RightToLeft};
};

// All pictures of the folder on one, to be looked at in one go.
void drawSheet(const QDir &folder)
{
    constexpr int width = 240, height = 300, across = 12;
    const QStringList files = folder.entryList({QStringLiteral("*.png")}, QDir::Files, QDir::Name);
    const int rows = (static_cast<int>(files.size()) + across - 1) / across;
    QImage sheet(across * width, rows * height, QImage::Format_RGB32);
    sheet.fill(Qt::darkGray);
    QPainter painter(&sheet);
    for (int i = 0; i < files.size(); ++i) {
        const QImage one = QImage(folder.filePath(files[i]))
                               .scaled(width - 8, height - 24, Qt::KeepAspectRatio, Qt::SmoothTransformation);
        const QPoint at(i % across * width, i / across * height);
        painter.drawImage(at + QPoint(4, 20), one);
        painter.setPen(Qt::white);
        painter.drawText(at + QPoint(4, 14), files[i].left(38));
    }
    painter.end();
    sheet.save(folder.filePath(QStringLiteral("sheet.jpg")));
}

int run(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("snugwalk"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QStringList arguments = QGuiApplication::arguments();
    if (arguments.size() < 2) {
        std::printf("usage: tst_screens BOOK [--all | --third] [--only PAGE] [--shots FOLDER]\n");
        return 2;
    }
    const auto after = [&](const char *option) {
        const auto at = arguments.indexOf(QLatin1String(option));
        return at < 0 || at + 1 >= arguments.size() ? QString() : arguments[at + 1];
    };
    const QString only = after("--only");
    const QString shots = after("--shots");
    if (!shots.isEmpty())
        QDir().mkpath(shots);

    MessageWatch watch;
    const bool isEmpty = arguments[1] == QStringLiteral("-");
    Result<ScratchBook> book = ScratchBook::copyOf(isEmpty ? QString() : arguments[1]);
    if (!book) {
        std::printf("%s\n", book.error().what.c_str());
        return 1;
    }
    Options options;
    options.book = book->file();
    options.now = parseLocal("2026-11-20T08:10:00+13:00");
    Result<std::unique_ptr<Wiring>> wiring = Wiring::make(options, Wiring::Mode::Still);
    if (!wiring || !openSomeWalk(**wiring)) {
        std::printf("the app does not open\n");
        return 1;
    }
    const QStringList languages = tongues();
    const std::vector<std::size_t> counts = {sizes.size(),  themes.size(),
                                             scales.size(), static_cast<std::size_t>(languages.size()),
                                             hands.size(),  units.size()};
    std::vector<Row> rows = arguments.contains(QStringLiteral("--all")) ? everyRow(counts) : pairwise(counts);
    // languages in a row: to change one reads all words again
    std::stable_sort(rows.begin(), rows.end(),
                     [](const Row &a, const Row &b) { return a[Tongue] < b[Tongue]; });
    int failed = static_cast<int>(pairsMissing(rows, counts));
    if (failed > 0)
        std::printf("%d pairs are not shown\n", failed);

    Screens screens(**wiring, shots);
    const bool third = arguments.contains(QStringLiteral("--third"));
    const QStringList pages = pageNames();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        for (qsizetype page = 0; page < pages.size(); ++page) {
            const bool isTurn = !third || (i + static_cast<std::size_t>(page)) % 3 == 0;
            if (!isTurn || (!only.isEmpty() && !pages[page].startsWith(only)))
                continue;
            const Setting setting = settingOf(rows[i], languages);
            const auto before = watch.warnings().size();
            screens.draw(pages[page], setting);
            if (watch.warnings().size() > before)
                std::printf("%s %s: Qt warns, see below\n", qUtf8Printable(pages[page]),
                            qUtf8Printable(setting.name()));
        }
    }
    for (const QString &line : watch.warnings())
        std::printf("warning: %s\n", qUtf8Printable(line));
    if (!shots.isEmpty())
        drawSheet(QDir(shots));
    std::printf("%d screens in %zu settings, %d with faults\n", screens.drawn, rows.size(), screens.faulty);
    return failed + screens.faulty + static_cast<int>(watch.warnings().size()) > 0 || screens.drawn == 0 ? 1
                                                                                                         : 0;
}

} // namespace

int main(int argc, char **argv)
{
    try {
        return run(argc, argv);
    } catch (const std::exception &fault) {
        std::printf("failed: %s\n", fault.what());
        return 70;
    }
}
