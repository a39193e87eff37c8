// SPDX-License-Identifier: Apache-2.0
// Reading the command line.
#include "options.hpp"

#include <QCommandLineParser>

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
