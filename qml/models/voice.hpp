// SPDX-License-Identifier: Apache-2.0
// How the app speaks: the catalogue's words, the locale and the units of the person.
#pragma once

#include <QCoreApplication>
#include <QLocale>
#include <QString>

#include <QVariantMap>

#include "base/number_style.hpp"
#include "base/time.hpp"
#include "base/units.hpp"
#include "catalogue/texts.hpp"
#include "rig/place.hpp"
#include "walk/walk.hpp"

namespace snugwalk {

/// A value: models hold a copy and are told when there is a new one.
class Voice {
    Q_DECLARE_TR_FUNCTIONS(Voice)
public:
    Texts texts;
    QLocale locale{QStringLiteral("en")};
    UnitSystem units = UnitSystem::Si;

    [[nodiscard]] QString point(std::string_view slug) const { return text(texts.point(slug).title); }
    [[nodiscard]] QString word(std::string_view group, std::string_view slug) const
    {
        return text(texts.word(group, slug));
    }
    [[nodiscard]] QString line(const TapeLine &line) const;

    /// In the person's units: "448.2 kPa", "65.0 psi".
    [[nodiscard]] QString quantity(Dimension dimension, double si) const;
    template <typename Q>
    [[nodiscard]] QString quantity(Q value) const
    {
        return quantity(DimensionOf<Q>::value, value.si());
    }
    /// The same of a figure that is an estimate: two digits, "33 000 km" for 32 656.
    [[nodiscard]] QString roughly(Dimension dimension, double si) const;
    /// In the unit it was read in, or the nearest we know.
    [[nodiscard]] QString inUnit(Dimension dimension, double si, std::string_view unit) const;
    [[nodiscard]] QString extent(const std::optional<Extent> &extent) const;
    [[nodiscard]] QString number(double value, int decimals) const;
    /// "448.2 kPa" with the number as the person's language writes it.
    [[nodiscard]] QString localised(const std::string &formatted) const;

    /// The marks of the locale: what splits off decimals, what groups.
    [[nodiscard]] NumberStyle numberStyle() const;
    /// What a person typed with its numbers made plain for the core.
    /// \returns `InvalidInput` for a number that can be read two ways, with both in `act`.
    [[nodiscard]] Result<std::string> plain(const QString &typed) const;
    /// "1.250 can be read two ways. Write 1250 or 1,250."
    [[nodiscard]] QString twoWays(const DoubtfulNumber &number) const;
    /// A quantity as typed, in SI; `bare` is the unit of a number without one. Errors as `plain` and
    /// `parseSi`.
    [[nodiscard]] Result<double> typed(Dimension dimension, const QString &text,
                                       std::optional<Unit> bare) const;
    /// A form with the numbers under `keys` made plain, texts and lists of texts. What can be read two ways
    /// gets a question mark, which every parser refuses and the person sees.
    [[nodiscard]] QVariantMap plainTexts(QVariantMap form, const QStringList &keys) const;

    [[nodiscard]] QString date(CivilDate date) const;
    [[nodiscard]] QString date(const LocalTime &time) const { return date(civilDate(time)); }
    [[nodiscard]] QString time(const LocalTime &time) const;
    [[nodiscard]] QString dateTime(const LocalTime &time) const;

    /// "roof, 4.1 m from the front, 0.6 m to the road side".
    [[nodiscard]] QString place(const Rig &rig, const RigPlace &place) const;
    /// A named place: "wheel 2R" in the person's language; names of openings stay as typed.
    [[nodiscard]] QString placeName(const std::string &named) const;
    [[nodiscard]] QString face(const Rig &rig, Face face) const;
    [[nodiscard]] QString position(const GeoPoint &point) const;
    [[nodiscard]] QString basis(std::string_view slug) const;
    [[nodiscard]] QString rigKind(RigKind kind) const;
    [[nodiscard]] QString findingStatus(std::string_view slug) const;
    [[nodiscard]] QString mendAction(std::string_view slug) const;

    [[nodiscard]] static QString text(std::string_view utf8)
    {
        return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
    }

private:
    [[nodiscard]] QString far(Length length) const;
};

} // namespace snugwalk
