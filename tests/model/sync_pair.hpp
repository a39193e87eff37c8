// SPDX-License-Identifier: Apache-2.0
// Two devices over one folder, as their pages would have it.
#pragma once

#include <functional>

#include <QImage>

#include "app_fixture.hpp"
#include "places/known_places.hpp"
#include "places/qr_picture.hpp"
#include "places/qr_rows.hpp"

namespace snugwalk::test {

inline constexpr const char *contested = "breakaway-lanyard";

// A device: its app, and the list of its stores beside its logbook.
struct Device {
    explicit Device(AppFixture::Book book, const std::string &seed)
        : app(book, seed), places(app.folder().file("device"))
    {
        app.parts.places = &places;
        app.parts.qrRows = qrRows;
        app.parts.qrBytes = qrBytes;
        app.parts.preferences.person = QString::fromStdString(seed);
        app.open();
    }
    [[nodiscard]] SyncModel &sync() { return *app.session().sync(); }
    [[nodiscard]] ShareModel &share() { return *sync().share(); }
    [[nodiscard]] ConflictsModel &conflicts() { return *sync().conflicts(); }

    void addStore(const std::string &place, const char *name = "stick", const char *kind = "folder")
    {
        sync().add({{QStringLiteral("name"), QLatin1String(name)},
                    {QStringLiteral("kind"), QLatin1String(kind)},
                    {QStringLiteral("place"), QString::fromStdString(place)}});
        app.settle();
    }
    void exchange(const char *store = "stick")
    {
        sync().exchangeNow(QLatin1String(store));
        app.settle();
    }
    // On the open walk, with no knowledge of what others do.
    void mark(const std::function<void(WalkModel &)> &act)
    {
        WalkModel &walk = app.walk();
        walk.goOn();
        for (int row = 0; row < walk.count(); ++row) {
            const auto &points = walk.walk()->tape[static_cast<std::size_t>(row)].points;
            if (std::find(points.begin(), points.end(), contested) != points.end())
                walk.goTo(row);
        }
        walk.selectPoint(QLatin1String(contested));
        act(walk);
        app.settle();
        app.session().refresh();
        app.settle();
    }

    AppFixture app;
    KnownPlaces places;
};

// An owner with a rig and a device that takes part in it, both at one store.
struct Pair {
    explicit Pair(const char *role = "helper")
        : owner(AppFixture::Book::Tandem, "owner"), other(AppFixture::Book::Empty, "other")
    {
        std::filesystem::create_directories(folder());
        meet(role);
        owner.addStore(folder());
        other.addStore(folder());
        owner.exchange();
        other.exchange();
    }
    [[nodiscard]] std::string folder() const { return owner.app.folder().file("stick"); }

    void meet(const char *role)
    {
        owner.share().offer(QLatin1String(role), QStringLiteral("2027-03-31"));
        owner.app.settle();
        other.share().answer(owner.share().words(), QStringLiteral("viewer"));
        other.app.settle();
        owner.share().takeAnswer(other.share().words());
        owner.app.settle();
        codes = {owner.share().code(), other.share().code()};
        owner.share().confirm();
        owner.app.settle();
    }
    void everybody()
    {
        owner.exchange();
        other.exchange();
        owner.exchange();
    }

    Device owner;
    Device other;
    QStringList codes;
};

// As a page draws it: dark on white, four modules of quiet around.
inline QImage codePicture(const QStringList &rows)
{
    constexpr int scale = 6;
    constexpr int quiet = 4;
    const int side = (static_cast<int>(rows.size()) + 2 * quiet) * scale;
    QImage picture(side, side, QImage::Format_Grayscale8);
    picture.fill(Qt::white);
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x) {
            if (rows.value(y / scale - quiet).mid(x / scale - quiet, x / scale < quiet ? 0 : 1) ==
                QStringLiteral("1"))
                picture.setPixel(x, y, qRgb(0, 0, 0));
        }
    }
    return picture;
}

inline QVariantMap row(const QVariantList &list, int at) { return list.value(at).toMap(); }
inline QString text(const QVariantMap &map, const char *key)
{
    return map.value(QLatin1String(key)).toString();
}
inline QString what(const QVariantMap &fault) { return text(fault, "what"); }

} // namespace snugwalk::test
