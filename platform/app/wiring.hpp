// SPDX-License-Identifier: Apache-2.0
// Everything the running app is made of, put together once.
#pragma once

#include <memory>

#include <QQmlComponent>
#include <QQmlEngine>
#include <QTranslator>

#include "base/time.hpp"
#include "camera_source.hpp"
#include "image/qt_codec.hpp"
#include "keys/hash.hpp"
#include "options.hpp"
#include "places/known_places.hpp"
#include "position_source.hpp"
#include "report_desk.hpp"
#include "session.hpp"

class QQuickWindow;

namespace snugwalk {

class Wiring {
public:
    /// Still: nothing moves, nothing is kept between runs, no receiver and no camera is asked.
    enum class Mode { Live, Still };

    /// Opens the window. \returns `Io` when the pages cannot be loaded, errors of the position log.
    [[nodiscard]] static Result<std::unique_ptr<Wiring>> make(const Options &options, Mode mode);
    ~Wiring();
    Wiring(const Wiring &) = delete;
    Wiring &operator=(const Wiring &) = delete;

    [[nodiscard]] Session &session() { return *m_session; }
    [[nodiscard]] QQuickWindow &window() { return *m_window; }

private:
    Wiring() = default;
    [[nodiscard]] Status makePosition(const Options &options, Mode mode);
    [[nodiscard]] Status makeCamera(const Options &options, Mode mode);
    void readKept();
    void makeSession();
    void beginPages();
    [[nodiscard]] Status loadPages();
    void speak(const QString &language);
    [[nodiscard]] BookPlaces bookPlaces();
    [[nodiscard]] Status makeDemo(const QString &demo, const std::function<void(int, int)> &progress);
    void changeBook(const QString &file, const QString &forgotten);

    // Order matters: each member outlives those below it.
    std::unique_ptr<Clock> m_clock;
    RandomIds m_ids;
    QtCodec m_codec;
    QTranslator m_translator;
    Options m_options;
    Mode m_mode = Mode::Live;
    Preferences m_preferences; ///< as read, then as the session before left them
    QString m_ownBook;         ///< the one the app begins with
    QString m_bookFile;        ///< the one that is open
    std::unique_ptr<PositionSource> m_position;
    std::unique_ptr<CameraSource> m_camera;
    std::unique_ptr<FeedbackSource> m_feedback;
    std::unique_ptr<SyncPlaces> m_places;
    std::unique_ptr<ReportDesk> m_desk;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<QQmlEngine> m_engine;
    std::unique_ptr<QQmlComponent> m_pages; ///< holds the pages' types while they are read
    std::unique_ptr<QObject> m_root;        ///< the window
    QQuickWindow *m_window = nullptr;
};

/// ~/…/logbook.snugwalk in the app's own folder.
[[nodiscard]] QString usualBook();
/// Where the person's preferences are kept.
[[nodiscard]] QString preferencesFile();

} // namespace snugwalk
