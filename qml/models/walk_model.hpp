// SPDX-License-Identifier: Apache-2.0
// The walk as the person goes along it: the tape, the line they stand at, and what they do there.
#pragma once

#include <memory>

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "tape_model.hpp"
#include "walk_jobs.hpp"
#include "walk_readings.hpp"

namespace snugwalk {

/// Taps are queued: the cursor moves on at once, the line shows its mark once the disk has it.
class WalkModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool active READ isActive NOTIFY activeChanged)
    Q_PROPERTY(bool busy READ isBusy NOTIFY progressChanged)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY progressChanged)
    Q_PROPERTY(QString kindName READ kindName NOTIFY activeChanged)
    Q_PROPERTY(int count READ count NOTIFY activeChanged)
    Q_PROPERTY(int linesLeft READ linesLeft NOTIFY progressChanged)
    Q_PROPERTY(bool complete READ isComplete NOTIFY progressChanged)
    Q_PROPERTY(QString progressText READ progressText NOTIFY progressChanged)
    Q_PROPERTY(snugwalk::TapeModel *tape READ tape CONSTANT)
    Q_PROPERTY(int current READ current NOTIFY currentChanged)
    Q_PROPERTY(QString standName READ standName NOTIFY currentChanged)
    Q_PROPERTY(QString standHelp READ standHelp NOTIFY currentChanged)
    Q_PROPERTY(QString standSlug READ standSlug NOTIFY currentChanged)
    Q_PROPERTY(bool grounded READ isGrounded NOTIFY currentChanged)
    Q_PROPERTY(int untold READ untold NOTIFY currentChanged)
    Q_PROPERTY(QString selectedPoint READ selectedPoint NOTIFY currentChanged)
    Q_PROPERTY(QString title READ title NOTIFY currentChanged)
    Q_PROPERTY(QString look READ look NOTIFY currentChanged)
    Q_PROPERTY(QString passText READ passText NOTIFY currentChanged)
    Q_PROPERTY(QVariantList points READ points NOTIFY currentChanged)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY currentChanged)
    Q_PROPERTY(QVariantList cautionPanel READ cautionPanel NOTIFY currentChanged)
    Q_PROPERTY(QVariantList readings READ readings NOTIFY currentChanged)
    Q_PROPERTY(QVariantList openFindings READ openFindings NOTIFY currentChanged)
    Q_PROPERTY(QVariantList defects READ defects NOTIFY currentChanged)
    Q_PROPERTY(QVariantList grades READ grades NOTIFY currentChanged)
    Q_PROPERTY(QVariantList reasons READ reasons NOTIFY currentChanged)
    Q_PROPERTY(QVariantList usualReasons READ usualReasons NOTIFY currentChanged)
    Q_PROPERTY(QVariantMap lastTime READ lastTime NOTIFY currentChanged)
    Q_PROPERTY(QString decimalMark READ decimalMark NOTIFY activeChanged)
public:
    WalkModel(const ActDesk *desk, QObject *parent);

    [[nodiscard]] bool isActive() const { return m_active; }
    [[nodiscard]] bool isBusy() const { return !m_pending.empty() || m_waiting > 0; }
    [[nodiscard]] bool canUndo() const { return m_walk && !m_marks.empty(); }
    [[nodiscard]] QString kindName() const;
    [[nodiscard]] int count() const { return m_walk ? static_cast<int>(m_walk->tape.size()) : 0; }
    [[nodiscard]] int linesLeft() const;
    [[nodiscard]] bool isComplete() const { return m_walk && linesLeft() == 0; }
    [[nodiscard]] QString progressText() const;
    [[nodiscard]] TapeModel *tape() { return &m_tape; }
    [[nodiscard]] int current() const { return m_current; }
    [[nodiscard]] QString standName() const;
    [[nodiscard]] QString standHelp() const;
    [[nodiscard]] QString standSlug() const;
    /// Whether one stands on the ground or a floor here: not at the roof, not underneath.
    [[nodiscard]] bool isGrounded() const;
    /// Open findings of the points at hand that nobody looked at on this walk: a pass asks for them first.
    [[nodiscard]] int untold() const;
    [[nodiscard]] QString selectedPoint() const { return Voice::text(m_selected); }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString look() const;
    [[nodiscard]] QString passText() const;
    [[nodiscard]] QVariantList points() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] QVariantList cautionPanel() const;
    [[nodiscard]] QVariantList readings() const;
    [[nodiscard]] QVariantList openFindings() const;
    [[nodiscard]] QVariantList defects() const;
    [[nodiscard]] QVariantList grades() const;
    [[nodiscard]] QVariantList reasons() const;
    /// The few that one press at the line writes.
    [[nodiscard]] QVariantList usualReasons() const;
    /// See `lastTime` in last_time.hpp; of the points at hand.
    [[nodiscard]] QVariantMap lastTime() const;
    /// What splits off decimals where the person reads.
    [[nodiscard]] QString decimalMark() const;
    /// The open walk, also while nobody is on it; null when there is none.
    [[nodiscard]] const Walk *walk() const { return m_walk ? &*m_walk : nullptr; }
    [[nodiscard]] const std::vector<Mark> &marks() const { return m_marks; }

    /// Takes a newer snapshot or voice. The first one that holds an open walk makes it active.
    void show(const Shown &shown);
    /// Something else was written while this walk is open; one undo takes it back.
    void noteAct();
    /// Findings in the order of their numbers on the drawing.
    void setNumbered(std::vector<Id> findings);

    /// \param minutes there are for it; 0 for all of it.
    Q_INVOKABLE void start(const QString &kindSlug, int minutes = 0);
    Q_INVOKABLE void goOn();
    Q_INVOKABLE void goTo(int line);
    Q_INVOKABLE void later();
    Q_INVOKABLE void stop();
    Q_INVOKABLE void finish();
    Q_INVOKABLE void undo();
    Q_INVOKABLE void selectPoint(const QString &slug);
    Q_INVOKABLE void cautionsRead();
    /// \param how glance, looked or measured.
    Q_INVOKABLE void pass(const QString &how);
    Q_INVOKABLE void notFitted();
    Q_INVOKABLE void couldNotLook(const QString &reason, const QString &note);
    Q_INVOKABLE void setReading(const QString &slug, const QString &place, const QString &text);
    /// {findings: [{point, same, gone, defect, grade, place: {named} or {face, x, y, z}, extent, note,
    /// photos: [{file, lines}]}]}, or one such finding. Where all that was known is gone it is a pass.
    Q_INVOKABLE void attention(const QVariantMap &map);

Q_SIGNALS:
    void activeChanged();
    void currentChanged();
    void progressChanged();
    void started();
    void finished();
    /// The disk has it.
    void marked(int line, const QString &state);
    /// Something was taken back, and the disk has it.
    void undone();
    /// The act of this line was not written; the session says why.
    void refused(int line);
    void readingChecked(const QString &slug, const QString &place, bool understood, const QString &message);

private:
    struct Seen {
        CivilDate day;
        std::string by;
        std::string stand;
        std::string code;
        friend auto operator<=>(const Seen &, const Seen &) = default;
    };

    [[nodiscard]] const Catalogue &catalogue() const { return m_shown.catalogue(*m_desk->parts->catalogue); }
    [[nodiscard]] const Voice &voice() const { return *m_shown.voice; }
    [[nodiscard]] const TapeLine *line() const;
    [[nodiscard]] std::vector<std::string> chosenPoints() const;
    [[nodiscard]] std::string singlePoint() const;
    [[nodiscard]] Seen seen(const std::string &code) const;
    [[nodiscard]] WalkJob job() const;

    void adopt(const WalkRecord *open);
    void moveTo(int line);
    void moveOn();
    void showTape();
    void markChosen(const MarkDraft &how);
    template <typename Act>
    void write(Act act);
    void settle(int line, Result<WalkNow> now);
    void leave();

    const ActDesk *m_desk;
    Shown m_shown;
    TapeModel m_tape;
    std::vector<Id> m_numbered;
    std::optional<Walk> m_walk;
    std::vector<Mark> m_marks;
    std::multiset<int> m_pending;             ///< lines with acts on their way to the disk
    int m_waiting = 0;                        ///< other acts on their way
    std::shared_ptr<std::vector<int>> m_taps; ///< see `WalkJob::taps`
    bool m_active = false;
    int m_current = -1;
    std::string m_selected;
    TypedReadings m_typed;
    std::set<Seen> m_seen;
};

} // namespace snugwalk
