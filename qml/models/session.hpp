// SPDX-License-Identifier: Apache-2.0
// One run of the app over one logbook: owns the worker and every model, and is all that QML is given.
#pragma once

#include <QObject>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "bench_model.hpp"
#include "book_model.hpp"
#include "books_model.hpp"
#include "camera_model.hpp"
#include "drawing_model.hpp"
#include "due_model.hpp"
#include "feedback_source.hpp"
#include "intake_model.hpp"
#include "last_act_model.hpp"
#include "map_model.hpp"
#include "plots_model.hpp"
#include "points_model.hpp"
#include "position_model.hpp"
#include "report_model.hpp"
#include "rig_model.hpp"
#include "search_model.hpp"
#include "supplies_model.hpp"
#include "sync_model.hpp"
#include "trend_model.hpp"
#include "trip_model.hpp"
#include "walk_model.hpp"
#include "what_if_model.hpp"
#include "why_model.hpp"

namespace snugwalk {

class Session : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY snapshotChanged)
    Q_PROPERTY(bool hasRig READ hasRig NOTIFY snapshotChanged)
    Q_PROPERTY(bool busy READ isBusy NOTIFY busyChanged)
    Q_PROPERTY(bool still READ isStill CONSTANT)
    Q_PROPERTY(QString errorWhat READ errorWhat NOTIFY errorChanged)
    Q_PROPERTY(QString errorDo READ errorDo NOTIFY errorChanged)
    Q_PROPERTY(QString units READ units WRITE setUnits NOTIFY preferencesChanged)
    Q_PROPERTY(QString theme READ theme WRITE setTheme NOTIFY preferencesChanged)
    Q_PROPERTY(bool gloves READ gloves WRITE setGloves NOTIFY preferencesChanged)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)
    Q_PROPERTY(QVariantList languages READ languages CONSTANT)
    Q_PROPERTY(QString person READ person WRITE setPerson NOTIFY preferencesChanged)
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY preferencesChanged)
    Q_PROPERTY(bool canSound READ canSound CONSTANT)
    Q_PROPERTY(bool canBuzz READ canBuzz CONSTANT)
    Q_PROPERTY(bool sound READ sound WRITE setSound NOTIFY preferencesChanged)
    Q_PROPERTY(bool buzz READ buzz WRITE setBuzz NOTIFY preferencesChanged)
    Q_PROPERTY(QVariantList rigs READ rigs NOTIFY snapshotChanged)
    Q_PROPERTY(QVariantList rigProblems READ rigProblems NOTIFY rigProblemsChanged)
    Q_PROPERTY(QVariantMap emergency READ emergency NOTIFY languageChanged)
    Q_PROPERTY(QString footer READ footer NOTIFY languageChanged)
    Q_PROPERTY(QString today READ today NOTIFY snapshotChanged)
    Q_PROPERTY(snugwalk::PositionModel *position READ position CONSTANT)
    Q_PROPERTY(snugwalk::RigModel *rig READ rig CONSTANT)
    Q_PROPERTY(snugwalk::WalkModel *walk READ walk CONSTANT)
    Q_PROPERTY(snugwalk::DueModel *due READ due CONSTANT)
    Q_PROPERTY(snugwalk::BookModel *book READ book CONSTANT)
    Q_PROPERTY(snugwalk::BooksModel *books READ books CONSTANT)
    Q_PROPERTY(snugwalk::BenchModel *bench READ bench CONSTANT)
    Q_PROPERTY(snugwalk::DrawingModel *drawing READ drawing CONSTANT)
    Q_PROPERTY(snugwalk::PointsModel *points READ points CONSTANT)
    Q_PROPERTY(snugwalk::SuppliesModel *supplies READ supplies CONSTANT)
    Q_PROPERTY(snugwalk::TrendModel *trends READ trends CONSTANT)
    Q_PROPERTY(snugwalk::CameraModel *camera READ camera CONSTANT)
    Q_PROPERTY(snugwalk::WhyModel *why READ why CONSTANT)
    Q_PROPERTY(snugwalk::WhatIfModel *whatIf READ whatIf CONSTANT)
    Q_PROPERTY(snugwalk::TripModel *trip READ trip CONSTANT)
    Q_PROPERTY(snugwalk::MapModel *map READ map CONSTANT)
    Q_PROPERTY(snugwalk::IntakeModel *intake READ intake CONSTANT)
    Q_PROPERTY(snugwalk::SyncModel *sync READ sync CONSTANT)
    Q_PROPERTY(snugwalk::SearchModel *search READ search CONSTANT)
    Q_PROPERTY(snugwalk::LastActModel *lastAct READ lastAct CONSTANT)
    Q_PROPERTY(snugwalk::ReportModel *reports READ reports CONSTANT)
    Q_PROPERTY(snugwalk::PlotsModel *plots READ plots CONSTANT)
public:
    /// Starts opening the logbook at once; `loaded` tells when the first answer came.
    explicit Session(AppParts parts, QObject *parent = nullptr);
    /// Waits until everything tapped is on the disk.
    ~Session() override;

    [[nodiscard]] bool isLoaded() const { return m_loaded; }
    [[nodiscard]] bool hasRig() const { return m_shown.history() != nullptr; }
    [[nodiscard]] bool isBusy() const
    {
        return m_walk->isBusy() || m_reading || m_trends->isBusy() || m_rig->isFitting() ||
               m_supplies->isBusy() || m_due->isBusy() || m_why->isBusy() || m_whatIf->isBusy() ||
               m_trip->isBusy() || m_map->isBusy() || m_intake->isBusy() || m_bench->isBusy() ||
               m_sync->isBusy() || m_search->isBusy() || m_lastAct->isBusy() || m_reports->isBusy() ||
               m_books->isBusy() || m_plots->isBusy();
    }
    [[nodiscard]] bool isStill() const { return m_parts.still; }
    [[nodiscard]] QString errorWhat() const { return m_errorWhat; }
    [[nodiscard]] QString errorDo() const { return m_errorDo; }
    [[nodiscard]] QString units() const;
    void setUnits(const QString &units);
    [[nodiscard]] QString theme() const { return m_preferences.theme; }
    void setTheme(const QString &theme);
    [[nodiscard]] bool gloves() const { return m_preferences.gloves; }
    void setGloves(bool gloves);
    [[nodiscard]] QString language() const { return m_preferences.language; }
    void setLanguage(const QString &language);
    [[nodiscard]] QVariantList languages() const; ///< slug, name
    [[nodiscard]] QString person() const { return m_preferences.person; }
    void setPerson(const QString &person);
    /// All of what the person set, as it stands.
    [[nodiscard]] const Preferences &preferences() const { return m_preferences; }
    [[nodiscard]] double textScale() const { return m_preferences.textScale; }
    void setTextScale(double scale);
    [[nodiscard]] bool canSound() const;
    [[nodiscard]] bool canBuzz() const;
    [[nodiscard]] bool sound() const { return m_preferences.sound; }
    void setSound(bool sound);
    [[nodiscard]] bool buzz() const { return m_preferences.buzz; }
    void setBuzz(bool buzz);
    /// [{id, name, current, archived}]
    [[nodiscard]] QVariantList rigs() const;
    /// [{field, what, act}] of the last `addRig` or `changeRig`; empty when there was no fault.
    [[nodiscard]] QVariantList rigProblems() const { return m_rigProblems; }
    /// {title, gas, co, fire, tingle}
    [[nodiscard]] QVariantMap emergency() const;
    [[nodiscard]] QString footer() const;
    [[nodiscard]] QString today() const;
    [[nodiscard]] PositionModel *position() const { return m_position; }
    [[nodiscard]] RigModel *rig() const { return m_rig; }
    [[nodiscard]] WalkModel *walk() const { return m_walk; }
    [[nodiscard]] DueModel *due() const { return m_due; }
    [[nodiscard]] BookModel *book() const { return m_book; }
    [[nodiscard]] BooksModel *books() const { return m_books; }
    [[nodiscard]] BenchModel *bench() const { return m_bench; }
    [[nodiscard]] DrawingModel *drawing() const { return m_drawing; }
    [[nodiscard]] PointsModel *points() const { return m_points; }
    [[nodiscard]] SuppliesModel *supplies() const { return m_supplies; }
    [[nodiscard]] TrendModel *trends() const { return m_trends; }
    [[nodiscard]] CameraModel *camera() const { return m_camera; }
    [[nodiscard]] WhyModel *why() const { return m_why; }
    [[nodiscard]] WhatIfModel *whatIf() const { return m_whatIf; }
    [[nodiscard]] TripModel *trip() const { return m_trip; }
    [[nodiscard]] MapModel *map() const { return m_map; }
    [[nodiscard]] IntakeModel *intake() const { return m_intake; }
    [[nodiscard]] SyncModel *sync() const { return m_sync; }
    [[nodiscard]] SearchModel *search() const { return m_search; }
    [[nodiscard]] LastActModel *lastAct() const { return m_lastAct; }
    [[nodiscard]] ReportModel *reports() const { return m_reports; }
    [[nodiscard]] PlotsModel *plots() const { return m_plots; }

    Q_INVOKABLE void clearError();
    Q_INVOKABLE void chooseRig(const QString &id);
    /// \param map as typed, see rig_form.hpp
    Q_INVOKABLE void addRig(const QVariantMap &map);
    /// Puts right what is known of the rig under care; what differs becomes an entry.
    Q_INVOKABLE void changeRig(const QVariantMap &map);
    /// Puts a rig away, or brings it back: this device no longer offers it, its record stays.
    Q_INVOKABLE void archiveRig(const QString &id, bool archived);
    /// Reads the logbook again, at once.
    Q_INVOKABLE void refresh();

Q_SIGNALS:
    void snapshotChanged();
    void busyChanged();
    void errorChanged();
    void preferencesChanged();
    void languageChanged();
    void rigProblemsChanged();
    void rigAdded();

private:
    [[nodiscard]] Doer doer() const;
    void refuse(const Error &error);
    void noteChange(bool atOnce);
    void takeAnswer(Result<std::shared_ptr<const Snapshot>> answer);
    void adopt(std::shared_ptr<const Snapshot> snapshot);
    void speakAgain();
    void showAll();
    void keepPreferences();
    void writeRig(const Rig &rig);
    [[nodiscard]] bool isPutAway(const Rig &rig) const;
    [[nodiscard]] bool leavePutAway();
    void cue(Cue cue);

    const AppParts m_parts;
    Preferences m_preferences;
    Shown m_shown;
    Texts m_words; ///< the product's in the person's language
    bool m_loaded = false;
    bool m_unmade = false; ///< the logbook has no file yet
    bool m_reading = false;
    bool m_readAgain = false;
    QString m_errorWhat;
    QString m_errorDo;
    QVariantList m_rigProblems;
    QTimer m_idle; ///< reads again once no tap came for a moment, so that taps never wait for reading
    ActDesk m_desk;
    Worker *m_worker;
    PositionModel *m_position;
    WalkModel *m_walk;
    RigModel *m_rig;
    DueModel *m_due;
    BookModel *m_book;
    BooksModel *m_books;
    BenchModel *m_bench;
    DrawingModel *m_drawing;
    CameraModel *m_camera;
    TrendModel *m_trends;
    SuppliesModel *m_supplies;
    PointsModel *m_points;
    WhyModel *m_why;
    WhatIfModel *m_whatIf;
    TripModel *m_trip;
    MapModel *m_map;
    IntakeModel *m_intake;
    SyncModel *m_sync;
    SearchModel *m_search;
    LastActModel *m_lastAct;
    ReportModel *m_reports;
    PlotsModel *m_plots;
};

} // namespace snugwalk
