// SPDX-License-Identifier: Apache-2.0
// Reading the command line.
#include "options.hpp"

#include <QCommandLineParser>

#include "data/embedded.hpp"

namespace snugwalk {
namespace {

Error usage(const QString &what, const QString &where)
{
    return {Errc::Usage, what.toStdString(), where.toStdString(), "see snugwalk-app --help"};
}

} // namespace

Result<Options> readOptions(const QStringList &arguments)
{
    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("Walk round a rig and write down what you find."));
    const QCommandLineOption help({QStringLiteral("h"), QStringLiteral("help")},
                                  QStringLiteral("Show this."));
    const QCommandLineOption book(QStringLiteral("book"), QStringLiteral("Logbook file."),
                                  QStringLiteral("file"));
    const QCommandLineOption screens(
        QStringLiteral("screens"), QStringLiteral("Draw every page into this folder, on a copy, and leave."),
        QStringLiteral("folder"));
    const QCommandLineOption only(
        QStringLiteral("only"),
        QStringLiteral("Of --screens, the pages whose name begins so, such as bench."),
        QStringLiteral("page"));
    const QCommandLineOption nmea(QStringLiteral("nmea"),
                                  QStringLiteral("Take positions from an NMEA 0183 log."),
                                  QStringLiteral("file"));
    const QCommandLineOption camera(
        QStringLiteral("camera"),
        QStringLiteral("Take photos from the pictures of a folder, one after another."),
        QStringLiteral("folder"));
    const QCommandLineOption now(
        QStringLiteral("now"),
        QStringLiteral("A clock that stands still, such as 2026-11-24T08:10:00+13:00."),
        QStringLiteral("time"));
    const QCommandLineOption language(QStringLiteral("language"), QStringLiteral("en or es."),
                                      QStringLiteral("code"));
    const QCommandLineOption selfTest(QStringLiteral("self-test"),
                                      QStringLiteral("Open every page once and fail on any warning."));
    const QCommandLineOption untilUsable(
        QStringLiteral("until-usable"), QStringLiteral("Leave after the first frame on which one can work."));
    const QCommandLineOption paper(QStringLiteral("paper"),
                                   QStringLiteral("Write a report of this kind to --out, and leave."),
                                   QStringLiteral("kind"));
    const QCommandLineOption plot(
        QStringLiteral("plot"),
        QStringLiteral("Write a plot to --out, and leave: weathering, shake, cost, concern or reading, with "
                       "words of its title behind a slash, as in reading/tread-depth/1L."),
        QStringLiteral("kind"));
    const QCommandLineOption out(
        QStringLiteral("out"),
        QStringLiteral(
            "File of the report, ending in .pdf, .html, .csv, .geojson or .ics; of a plot in .png, "
            ".svg or .csv."),
        QStringLiteral("file"));
    const QCommandLineOption size(QStringLiteral("size"), QStringLiteral("Its sheets: a4 or letter."),
                                  QStringLiteral("sheet"), QStringLiteral("a4"));
    const QCommandLineOption place(QStringLiteral("place"),
                                   QStringLiteral("Places in it: left_out, coarse or exact."),
                                   QStringLiteral("how"), QStringLiteral("left_out"));
    const QCommandLineOption ownData(QStringLiteral("photo-data"),
                                     QStringLiteral("Photos keep what the camera wrote into them (.html)."));
    const QCommandLineOption units(QStringLiteral("units"), QStringLiteral("Its units: si or us."),
                                   QStringLiteral("system"), QStringLiteral("si"));
    parser.addOptions({paper, plot, out, size, place, ownData, units});
    parser.addOptions({help, book, screens, only, nmea, camera, now, language, selfTest, untilUsable});
    if (!parser.parse(arguments))
        return usage(parser.errorText(), {});
    if (!parser.positionalArguments().isEmpty())
        return usage(QStringLiteral("nothing is expected after the options"),
                     parser.positionalArguments().first());

    Options options;
    options.help = parser.isSet(help);
    options.helpText = parser.helpText();
    options.book = parser.value(book);
    options.screensFolder = parser.value(screens);
    options.screensOnly = parser.value(only);
    options.nmeaFile = parser.value(nmea);
    options.cameraFolder = parser.value(camera);
    options.language = parser.value(language);
    options.paper = parser.value(paper);
    options.plot = parser.value(plot);
    options.paperFile = parser.value(out);
    options.paperSize = parser.value(size);
    options.paperPlace = parser.value(place);
    options.ownData = parser.isSet(ownData);
    options.usUnits = parser.value(units) == QStringLiteral("us");
    if ((options.paper.isEmpty() && options.plot.isEmpty()) != options.paperFile.isEmpty())
        return usage(QStringLiteral("--paper or --plot and --out belong together"), {});
    if (!options.paper.isEmpty() && !options.plot.isEmpty())
        return usage(QStringLiteral("--paper and --plot are two files"), {});
    if (!QStringList{QStringLiteral("a4"), QStringLiteral("letter")}.contains(options.paperSize))
        return usage(QStringLiteral("no such sheet"), options.paperSize);
    options.selfTest = parser.isSet(selfTest);
    options.untilUsable = parser.isSet(untilUsable);
    if (!options.language.isEmpty() && !isProductLanguage(options.language.toStdString()))
        return usage(QStringLiteral("no such language"), options.language);
    if (parser.isSet(now)) {
        options.now = parseLocal(parser.value(now).toStdString());
        if (!options.now)
            return usage(QStringLiteral("not a time with its zone"), parser.value(now));
    }
    return options;
}

} // namespace snugwalk
