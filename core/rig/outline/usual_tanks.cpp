// SPDX-License-Identifier: Apache-2.0
// Common practice, no source: fresh water near the axles, waste behind it, gas and battery on the drawbar.
#include "rig/outline/usual_tanks.hpp"

#include <algorithm>

namespace snugwalk::outline {
namespace {

// A stretch of the underside that no wheel needs, in metres aft of the front.
struct Room {
    double from, to;
    [[nodiscard]] double length() const { return std::max(0.0, to - from); }
};

struct Rooms {
    Room fresh, waste;
};

Rooms roomsOf(const Rig &rig)
{
    const Measures &m = rig.measures;
    const double length = m.length.si();
    const double wheel = 0.45; // half a wheel and its arch
    if (m.axles.empty())
        return {{0.36 * length, 0.64 * length}, {0.66 * length, 0.96 * length}};
    const double first = m.axles.front().si();
    const double last = m.axles.back().si();
    if (!isTowed(rig.kind)) { // the engine's axle is ahead of all that
        const double from = first + wheel;
        const double to = m.axles.size() > 1 ? m.axles[1].si() - wheel : 0.96 * length;
        return {{from, (from + to) / 2}, {(from + to) / 2, to}};
    }
    return {{0.08 * length, first - wheel}, {last + wheel, 0.97 * length}};
}

class Places {
public:
    explicit Places(const Rig &rig) : m_rig(rig), m_rooms(roomsOf(rig)), m_width(rig.measures.width.si()) {}

    std::vector<UsualTank> all()
    {
        const auto has = [&](const char *fitting) { return m_rig.fittings.count(fitting) > 0; };
        if (has("fresh_water") && !has("loose_tanks"))
            add(TankKind::FreshWater, m_rooms.fresh.to - share(m_rooms.fresh, 1.0) / 2, 0,
                share(m_rooms.fresh, 1.0), m_width * 0.55);
        if (has("waste_tanks") && !has("loose_tanks"))
            addWaste(!has("cassette_toilet"));
        if (has("lp_gas"))
            addGas();
        if (has("house_battery"))
            addBattery();
        return std::move(m_tanks);
    }

private:
    static double share(const Room &room, double most) { return std::min(most, room.length() * 0.8); }
    [[nodiscard]] double roadSide() const { return kerbIsLeft(m_rig) ? 1.0 : -1.0; }
    [[nodiscard]] bool hasDrawbar() const { return m_rig.measures.hitchLength.si() >= 0.9; }

    void add(TankKind kind, double aft, double right, double along, double across, bool round = false)
    {
        if (along < 0.05 || across < 0.05) // no room for it on a body this short
            return;
        const auto metre = [](double v) { return Length::fromSi(v); };
        m_tanks.push_back({kind, static_cast<char>('A' + static_cast<int>(kind)),
                           RigPosition{metre(aft), metre(right), m_rig.measures.floorHeight}, metre(along),
                           metre(across), round});
    }

    void addWaste(bool black)
    {
        const Room &room = m_rooms.waste;
        const double each = std::min(0.8, room.length() * (black ? 0.42 : 0.8));
        const double gap = std::min(0.1, room.length() * 0.06);
        add(TankKind::GreyWater, room.from + each / 2, 0, each, m_width * 0.45);
        if (black)
            add(TankKind::BlackWater, room.from + each * 1.5 + gap, roadSide() * m_width * 0.12, each,
                m_width * 0.45);
    }

    void addGas()
    {
        const double bottle = 0.3;
        const bool front = m_rig.practice == Practice::Europe || m_rig.practice == Practice::Other;
        if (hasDrawbar() && !front) {
            add(TankKind::Gas, -0.2, -0.18, bottle, bottle, true);
            add(TankKind::Gas, -0.2, 0.18, bottle, bottle, true);
        } else if (hasDrawbar()) { // in the locker behind the front wall
            add(TankKind::Gas, 0.28, -0.18, bottle, bottle, true);
            add(TankKind::Gas, 0.28, 0.18, bottle, bottle, true);
        } else {
            add(TankKind::Gas, m_rig.measures.length.si() * 0.34, roadSide() * (m_width / 2 - 0.26), bottle,
                bottle, true);
        }
    }

    void addBattery()
    {
        if (hasDrawbar() && m_rig.practice == Practice::NorthAmerica)
            add(TankKind::Battery, -0.52, 0, 0.2, 0.34);
        else
            add(TankKind::Battery, m_rig.measures.length.si() * 0.44, roadSide() * (m_width / 2 - 0.24), 0.34,
                0.2);
    }

    const Rig &m_rig;
    Rooms m_rooms;
    double m_width;
    std::vector<UsualTank> m_tanks;
};

} // namespace

std::vector<UsualTank> usualTanks(const Rig &rig) { return Places(rig).all(); }

std::string_view slug(TankKind kind)
{
    switch (kind) {
    case TankKind::FreshWater:
        return "fresh_water";
    case TankKind::GreyWater:
        return "grey_water";
    case TankKind::BlackWater:
        return "black_water";
    case TankKind::Gas:
        return "gas";
    case TankKind::Battery:
        break;
    }
    return "battery";
}

} // namespace snugwalk::outline
