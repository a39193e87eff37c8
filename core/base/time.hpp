// SPDX-License-Identifier: Apache-2.0
// Instants in UTC, civil dates without a zone, and a clock that tests can set.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace snugwalk {

/// A moment, UTC, to the millisecond.
using Instant = std::chrono::sys_time<std::chrono::milliseconds>;
/// A day as people say it, without a zone.
using CivilDate = std::chrono::year_month_day;

/// Minutes east of UTC of the place where something was done, -14 h to +14 h.
struct ZoneOffset {
    int minutes = 0;
    friend constexpr auto operator<=>(ZoneOffset, ZoneOffset) = default;
};

/// A moment together with the local time that the person saw.
struct LocalTime {
    Instant instant{};
    ZoneOffset offset{};
    friend constexpr auto operator<=>(const LocalTime &, const LocalTime &) = default;
};

[[nodiscard]] constexpr long long toMillis(Instant instant) { return instant.time_since_epoch().count(); }
[[nodiscard]] constexpr Instant fromMillis(long long ms) { return Instant(std::chrono::milliseconds(ms)); }

/// "2026-11-24T08:10:00Z"; milliseconds are printed only when not zero. Source [RFC3339].
[[nodiscard]] std::string formatInstant(Instant instant);
/// "2026-11-24T21:10:00+13:00".
[[nodiscard]] std::string formatLocal(const LocalTime &time);
/// "2026-11-24 21:10", for people.
[[nodiscard]] std::string formatLocalShort(const LocalTime &time);
/// "2026-11-24".
[[nodiscard]] std::string formatDate(CivilDate date);

/// [RFC3339] date-time with "Z" or an offset, fraction allowed; a time without a zone is refused.
[[nodiscard]] std::optional<LocalTime> parseLocal(std::string_view text);
[[nodiscard]] std::optional<CivilDate> parseDate(std::string_view text);

[[nodiscard]] CivilDate civilDate(const LocalTime &time);
[[nodiscard]] constexpr Instant startOfDay(CivilDate date) { return Instant(std::chrono::sys_days(date)); }
/// Month-end clamp: 31 January + 1 month = 28 or 29 February.
[[nodiscard]] CivilDate addMonths(CivilDate date, int months);
[[nodiscard]] CivilDate addDays(CivilDate date, long long days);
[[nodiscard]] long long daysBetween(CivilDate from, CivilDate to);

/// Where the time comes from; a promise of the makers: `now` never throws.
class Clock {
public:
    Clock() = default;
    Clock(const Clock &) = delete;
    Clock &operator=(const Clock &) = delete;
    virtual ~Clock() = default;
    [[nodiscard]] virtual LocalTime now() const = 0;
};

/// The machine's clock and zone.
class SystemClock final : public Clock {
public:
    [[nodiscard]] LocalTime now() const override;
};

/// A clock that stands where it is put.
class FixedClock final : public Clock {
public:
    explicit FixedClock(LocalTime time) : m_time(time) {}
    [[nodiscard]] LocalTime now() const override { return m_time; }
    void set(LocalTime time) { m_time = time; }
    void advance(std::chrono::milliseconds by) { m_time.instant += by; }

private:
    LocalTime m_time;
};

} // namespace snugwalk
