// SPDX-License-Identifier: Apache-2.0
// The bench: every question of the table, the one that is open, what was typed for each, the answer.
#pragma once

#include <map>

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "bench_inputs.hpp"

namespace snugwalk {

class BenchModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QVariantList subjects READ subjects NOTIFY changed)
    Q_PROPERTY(QString question READ question NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
    Q_PROPERTY(snugwalk::BenchInputModel *inputs READ inputs CONSTANT)
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QVariantList figures READ figures NOTIFY changed)
    Q_PROPERTY(QStringList lines READ lines NOTIFY changed)
    Q_PROPERTY(QStringList warnings READ warnings NOTIFY changed)
    Q_PROPERTY(QString assumed READ assumed NOTIFY changed)
    Q_PROPERTY(QVariantList pictures READ pictures NOTIFY picturesChanged)
    Q_PROPERTY(QVariantMap keeping READ keeping NOTIFY changed)
    Q_PROPERTY(QVariantMap fitting READ fitting NOTIFY changed)
public:
    BenchModel(const ActDesk *desk, QObject *parent);

    /// An act is on its way to the logbook.
    [[nodiscard]] bool isBusy() const { return m_waiting > 0; }
    /// See `benchSubjects`.
    [[nodiscard]] QVariantList subjects() const { return m_subjects; }
    /// The open one's name.
    [[nodiscard]] QString question() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] BenchInputModel *inputs() { return &m_inputs; }
    /// "Still to type: largest load; load."; empty when nothing is.
    [[nodiscard]] QString missing() const { return m_missing; }
    /// What stands in the way and is no single field's fault.
    [[nodiscard]] QString problem() const { return m_problem; }
    /// See bench_words.hpp; empty without an answer.
    [[nodiscard]] QVariantList figures() const;
    [[nodiscard]] QStringList lines() const;
    [[nodiscard]] QStringList warnings() const;
    [[nodiscard]] QString assumed() const;
    /// See bench_pictures.hpp and wheel_map.hpp.
    [[nodiscard]] QVariantList pictures() const { return m_pictures; }
    /// {able, what: "Cold pressure on Tire pressure", stands: why not or what was kept, places: [{slug,
    /// name}]}; empty when nothing can be kept of this question.
    [[nodiscard]] QVariantMap keeping() const;
    /// {places: [{slug, name}], point, title, when}: that a wheel was fitted can be written down, and when
    /// its nuts are due by what was; empty for questions of other subjects and without a rig.
    [[nodiscard]] QVariantMap fitting() const;

    void show(const Shown &shown);

    /// An unknown name, such as an empty one, keeps the open one, or opens the first.
    Q_INVOKABLE void open(const QString &question);
    /// What was typed stays until the app ends; an empty text is typed too.
    Q_INVOKABLE void type(const QString &input, const QString &text);
    /// Fills the worked example in.
    Q_INVOKABLE void showExample();
    /// Back to what the rig says.
    Q_INVOKABLE void clear();
    /// The answer as a reading on its point, by the act that the command line's --keep is.
    Q_INVOKABLE void keep(const QString &place);
    /// Writes down that this wheel was fitted: its nuts come due after a few miles, until looked at.
    Q_INVOKABLE void noteWheelFitted(const QString &place);

Q_SIGNALS:
    void changed();
    /// Only when there is something else to draw: a star keeps its place while other fields are typed.
    void picturesChanged();

private:
    [[nodiscard]] const BenchTexts &byHand() const;
    [[nodiscard]] BenchTexts texts() const;
    [[nodiscard]] CivilDate today() const { return civilDate(m_desk->parts->clock->now()); }
    [[nodiscard]] const Catalogue &catalogue() const { return m_shown.catalogue(*m_desk->parts->catalogue); }
    [[nodiscard]] const Point *keptOn() const;
    [[nodiscard]] QString whyNotKept(const Point &point) const;
    void work();
    void draw(const BenchTexts &typed);
    void refuse(const Error &error, std::vector<BenchInputRow> &rows);

    const ActDesk *m_desk;
    Shown m_shown;
    QVariantList m_subjects;
    const BenchQuestion *m_open = nullptr;
    std::map<std::string, BenchTexts> m_typed;  ///< by question, plain where nobody typed
    std::map<std::string, BenchTexts> m_byHand; ///< of those what a person typed, as it stands in the field
    BenchInputModel m_inputs;
    std::optional<BenchAnswer> m_answer;
    QVariantList m_pictures;
    QString m_missing;
    QString m_problem;
    QString m_kept;
    int m_waiting = 0;
};

} // namespace snugwalk
