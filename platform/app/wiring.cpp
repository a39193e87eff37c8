// SPDX-License-Identifier: Apache-2.0
// Building the parts in order and opening the window.
#include "wiring.hpp"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QStandardPaths>

#include "app_fonts.hpp"
#include "camera/make_camera.hpp"
#include "data/embedded.hpp"
#include "data/product_world.hpp"
#include "desk/paper_desk.hpp"
#include "device/device.hpp"
#include "feedback/make_feedback.hpp"
#include "photo_provider.hpp"
#include "places/qr_picture.hpp"
#include "places/qr_rows.hpp"
#include "position/make_position.hpp"

namespace snugwalk {
namespace {

const QUrl mainPage(QStringLiteral("qrc:/qt/qml/Snugwalk/App/Main.qml"));

QString systemLanguage()
{
    const QString code = QLocale::system().name().section(u'_', 0, 0);
    return isProductLanguage(code.toStdString()) ? code : QStringLiteral("en");
}

Result<Logbook> openBook(const QString &file, const Clock &clock, IdSource &ids)
{
    const std::filesystem::path path = file.toStdString();
    std::error_code fault;
    std::filesystem::create_directories(path.parent_path(), fault); // what fails here, `open` tells
    const Result<DeviceKey> key = deviceKey(dataFolder());
    if (!key)
        return key.error();
    return Logbook::open(file.toStdString(), {*key, deviceLabel(), &clock, &ids, true});
}

// Reads the tables when first asked and keeps them; the worker's thread alone asks.
std::function<std::shared_ptr<const World>()> keptWorld()
{
    const auto kept = std::make_shared<std::shared_ptr<const World>>();
    return [kept] {
        if (!*kept)
            *kept = std::make_shared<const World>(productWorld().world);
        return *kept;
    };
}

} // namespace

QString usualBook() { return QString::fromStdString((dataFolder() / "logbook.snugwalk").string()); }

QString preferencesFile()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation) +
           QStringLiteral("/preferences.ini");
}

Wiring::~Wiring() = default;

Result<std::unique_ptr<Wiring>> Wiring::make(const Options &options, Mode mode)
{
    std::unique_ptr<Wiring> wiring(new Wiring);
    if (options.now)
        wiring->m_clock = std::make_unique<FixedClock>(*options.now);
    else
        wiring->m_clock = std::make_unique<SystemClock>();
    wiring->m_options = options;
    wiring->m_mode = mode;
    wiring->readKept();
    wiring->m_bookFile = wiring->m_ownBook;
    wiring->beginPages();
    loadFonts();
    SNUG_TRY(wiring->makePosition(options, mode));
    SNUG_TRY(wiring->makeCamera(options, mode));
    wiring->makeSession();
    SNUG_TRY(wiring->loadPages());
    return wiring;
}

Status Wiring::makePosition(const Options &options, Mode mode)
{
    if (!options.nmeaFile.isEmpty()) {
        const std::string log = options.nmeaFile.toStdString();
        auto source = mode == Mode::Still ? lastOfNmea(log) : nmeaPosition(log);
        if (!source)
            return source.error();
        m_position = std::move(source).value();
    } else if (mode == Mode::Live) {
        m_position = systemPosition();
    }
    return done();
}

Status Wiring::makeCamera(const Options &options, Mode mode)
{
    if (!options.cameraFolder.isEmpty()) {
        auto source = recordedCamera(options.cameraFolder.toStdString());
        if (!source)
            return source.error();
        m_camera = std::move(source).value();
    } else if (mode == Mode::Live) {
        m_camera = systemCamera();
    }
    return done();
}

void Wiring::readKept()
{
    if (m_mode == Mode::Live)
        m_preferences = readPreferences(preferencesFile());
    if (!m_options.language.isEmpty())
        m_preferences.language = m_options.language;
    if (m_preferences.language.isEmpty())
        m_preferences.language = systemLanguage();
    const bool kept = m_options.book.isEmpty() && QFile::exists(m_preferences.book);
    m_ownBook = kept ? m_preferences.book : m_options.book.isEmpty() ? usualBook() : m_options.book;
}

void Wiring::makeSession()
{
    AppParts parts;
    parts.catalogue = &productCatalogue();
    parts.supplies = &productSupplies();
    for (const Language &one : productLanguages())
        parts.languages.emplace_back(one.slug, one.name);
    parts.texts = [](std::string_view language) { return productTexts(language); };
    parts.openBook = [file = m_bookFile, clock = m_clock.get(), ids = &m_ids] {
        return openBook(file, *clock, *ids);
    };
    parts.world = keptWorld();
    parts.codec = &m_codec;
    parts.clock = m_clock.get();
    parts.position = m_position.get();
    parts.camera = m_camera.get();
    parts.books = bookPlaces();
    parts.bookMissing = !QFile::exists(m_bookFile);
    if (m_mode == Mode::Live)
        m_feedback = systemFeedback();
    parts.feedback = m_feedback.get();
    // pictures and checks of the pages know no stores, and the invented rig never meets the person's own
    const bool isOwn = m_mode == Mode::Live && m_bookFile != parts.books.demo;
    const std::filesystem::path beside = m_bookFile.toStdString() + ".stores";
    m_places = std::make_unique<KnownPlaces>(isOwn ? dataFolder() : beside);
    parts.places = m_places.get();
    m_desk = std::make_unique<PaperDesk>(productSupplies());
    parts.reports = m_desk.get();
    parts.qrRows = qrRows;
    parts.qrBytes = qrBytes;
    parts.takenFolder = m_bookFile.toStdString() + ".taken";
    parts.still = m_mode == Mode::Still;
    if (m_mode == Mode::Live)
        parts.preferencesFile = preferencesFile();
    parts.preferences = m_preferences;
    parts.speak = [this](const QString &language) { speak(language); };
    m_session = std::make_unique<Session>(std::move(parts));
}

void Wiring::speak(const QString &language)
{
    QCoreApplication::removeTranslator(&m_translator);
    if (m_translator.load(QStringLiteral(":/i18n/snugwalk_") + language))
        QCoreApplication::installTranslator(&m_translator);
}

// The engine's own thread reads the pages' types while this one makes what they show: `loadPages` then finds
// them read, or waits for the rest.
void Wiring::beginPages()
{
    // Not an application's engine: that one looks for other editions of each address, of a photo's file too.
    m_engine = std::make_unique<QQmlEngine>();
    m_engine->addImportPath(QStringLiteral(":/qt/qml"));
    m_pages = std::make_unique<QQmlComponent>(m_engine.get(), mainPage, QQmlComponent::Asynchronous);
}

Status Wiring::loadPages()
{
    const std::filesystem::path photos = m_bookFile.toStdString() + ".photos";
    m_engine->addImageProvider(QStringLiteral("photo"), new PhotoProvider(photos)); // the engine owns it
    m_engine->addImageProvider(QStringLiteral("report"), new ReportPictures(m_session->reports()->sheets()));
    QQmlComponent pages(m_engine.get(), mainPage, QQmlComponent::PreferSynchronous);
    m_root.reset(pages.createWithInitialProperties(
        {{QStringLiteral("session"), QVariant::fromValue(m_session.get())}}));
    for (const QQmlError &fault : pages.errors())
        qWarning("%s", qPrintable(fault.toString()));
    m_window = qobject_cast<QQuickWindow *>(m_root.get());
    if (m_window == nullptr)
        return Error{Errc::Corrupt, "the pages cannot be loaded", "Main.qml", "install the program again"};
    QObject::connect(m_session.get(), &Session::languageChanged, m_engine.get(),
                     [this] { m_engine->retranslate(); });
    return done();
}

} // namespace snugwalk
