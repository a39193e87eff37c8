// SPDX-License-Identifier: Apache-2.0
// The rig as the home shows it: its measures, what is open on it, and what to do next.
#pragma once

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "ever_places.hpp"
#include "finding_model.hpp"
#include "start/first_look.hpp"
#include "walk_budget.hpp"

namespace snugwalk {

class WalkModel;

class RigModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString state READ state NOTIFY changed)
    Q_PROPERTY(QVariantList holds READ holds NOTIFY changed)
    Q_PROPERTY(QVariantList figures READ figures NOTIFY changed)
    Q_PROPERTY(QStringList hiddenPoints READ hiddenPoints NOTIFY changed)
    Q_PROPERTY(bool fresh READ isFresh NOTIFY changed)
    Q_PROPERTY(int budget READ budget NOTIFY changed)
    Q_PROPERTY(QStringList placeNames READ placeNames NOTIFY changed)
    Q_PROPERTY(int findingCount READ findingCount NOTIFY changed)
    Q_PROPERTY(QVariantMap drawn READ drawn NOTIFY changed)
    Q_PROPERTY(QVariantList everPlaces READ everPlaces NOTIFY changed)
    Q_PROPERTY(QString everElsewhere READ everElsewhere NOTIFY changed)
    Q_PROPERTY(bool kerbLeft READ kerbLeft NOTIFY changed)
    Q_PROPERTY(snugwalk::FindingModel *findings READ findings CONSTANT)
    Q_PROPERTY(QVariantList fittings READ fittingChoices NOTIFY changed)
    Q_PROPERTY(QVariantList kinds READ kinds NOTIFY changed)
    Q_PROPERTY(QVariantList mendActions READ mendActionChoices NOTIFY changed)
    Q_PROPERTY(bool walkOpen READ walkOpen NOTIFY barChanged)
    Q_PROPERTY(QString barTitle READ barTitle NOTIFY barChanged)
    Q_PROPERTY(QString barDetail READ barDetail NOTIFY barChanged)
public:
    RigModel(const ActDesk *desk, const WalkModel *walk, QObject *parent);

    [[nodiscard]] QString name() const;
    /// "twin-axle travel trailer, 6.4 m, 2500 kg; 31 204 km".
    [[nodiscard]] QString about() const;
    /// What was looked at and what is open, in sentences.
    [[nodiscard]] QString state() const;
    /// [{title, why, forbids, findingId}]: every ground for a hold.
    [[nodiscard]] QVariantList holds() const;
    /// [{title, brief, text, why: [text]}]: worst item, chance of a serious one, share looked at.
    [[nodiscard]] QVariantList figures() const;
    /// Hidden points on which the road or fire hangs, with who hid them and when.
    [[nodiscard]] QStringList hiddenPoints() const;
    /// Whether nobody has looked at any point yet.
    [[nodiscard]] bool isFresh() const { return wantsFirstLook(m_shown); }
    /// Minutes there are for a walk; 0 for all of it.
    [[nodiscard]] int budget() const { return m_budget; }
    /// Wheels and openings: what `place.named` of a finding may be.
    [[nodiscard]] QStringList placeNames() const;
    [[nodiscard]] int findingCount() const { return m_findings.rowCount(); }
    [[nodiscard]] bool kerbLeft() const;
    /// What a drawing of it needs, see sheet/drawn_rig.hpp; empty without a rig.
    [[nodiscard]] QVariantMap drawn() const;
    /// Every place where something was ever found, see ever_places.hpp.
    [[nodiscard]] QVariantList everPlaces() const { return everPlaceList(m_shown); }
    [[nodiscard]] QString everElsewhere() const { return everElsewhereWords(m_shown); }
    [[nodiscard]] FindingModel *findings() { return &m_findings; }
    /// [{slug, name, about, lines, minutes, jobs, suggested, leftOut, holdsLeftOut}], the likely one first;
    /// one with `budget` is started within these minutes.
    [[nodiscard]] QVariantList kinds() const;
    /// [{slug, name}]: what can be fitted to a rig.
    [[nodiscard]] QVariantList fittingChoices() const;
    [[nodiscard]] bool isFitting() const { return m_fitting > 0; }
    [[nodiscard]] QVariantList mendActionChoices() const;
    [[nodiscard]] bool walkOpen() const;
    [[nodiscard]] QString barTitle() const;
    [[nodiscard]] QString barDetail() const;

    void show(const Shown &shown);
    /// Ids in the order of their numbers.
    [[nodiscard]] std::vector<Id> numbered() const;

    /// One person's own decision to move once although `point` could not be looked at.
    Q_INVOKABLE void accept(const QString &point, const QString &because, const QString &knowing);
    /// Everything about one finding, see finding_detail.hpp; empty for an unknown one.
    /// An empty id is the first there is.
    /// A length as typed, "4.1 m" or "13 ft 5 in"; without a unit metres or feet. Not a number when not
    /// understood.
    Q_INVOKABLE double metres(const QString &typed) const;
    /// Slugs that such a rig usually has.
    Q_INVOKABLE QStringList usualFittings(const QString &kind, const QString &practice) const;
    Q_INVOKABLE void setBudget(int minutes);
    /// A form's texts as a drawing, see start/rig_draft.hpp. \param own whether this rig is put right by it
    Q_INVOKABLE QVariantMap draft(const QVariantMap &map, bool own) const;
    /// This rig as its form shows it, see rig_form.hpp.
    Q_INVOKABLE QVariantMap formTexts() const;
    /// A named place in the person's language.
    Q_INVOKABLE QString placeTitle(const QString &named) const
    {
        return m_shown.voice->placeName(named.toStdString());
    }
    /// "kerb side", "roof": a face by its slug.
    Q_INVOKABLE QString faceName(const QString &slug) const;
    Q_INVOKABLE QVariantMap finding(const QString &id) const;
    /// \param map {action, what, parts, cost, minutes}; parts by commas, with how many: "lap sealant,
    /// 2 cartridges, primer".
    Q_INVOKABLE void mend(const QStringList &findings, const QVariantMap &map);

Q_SIGNALS:
    void changed();
    void barChanged();
    void mended();

private:
    [[nodiscard]] const Rig *rig() const;
    void findFirstLook();

    const ActDesk *m_desk;
    const WalkModel *m_walk;
    Shown m_shown;
    FindingModel m_findings;
    QVariantList m_kinds;
    std::optional<BudgetedTape> m_firstLook; ///< while nobody has looked at anything
    std::vector<FittedKind> m_fitted;        ///< what fits into the budget; empty without one
    int m_fitting = 0;                       ///< answers on their way
    int m_budget = 0;
};

} // namespace snugwalk
