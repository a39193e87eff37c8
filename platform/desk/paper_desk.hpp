// SPDX-License-Identifier: Apache-2.0
// Reports for the app: composed, drawn on sheets, and as files for others.
#pragma once

#include "catalogue/supplies.hpp"
#include "report_desk.hpp"

namespace snugwalk {

/// Keeps nothing: each call reads what it needs.
class PaperDesk final : public ReportDesk {
public:
    /// \param supplies outlives this
    explicit PaperDesk(const SupplyList &supplies) : m_supplies(supplies) {}

    [[nodiscard]] std::vector<ReportKind> kinds(const Texts &texts) const override;
    [[nodiscard]] std::vector<std::string> endings() const override;
    [[nodiscard]] ReportChoices choices(const Shown &shown, const std::string &kind) const override;
    [[nodiscard]] Result<ReportLook> look(Logbook &book, const Shown &shown, const ReportWish &wish,
                                          int width) const override;
    [[nodiscard]] Result<std::string> bytes(Logbook &book, const Shown &shown, const ReportWish &wish,
                                            const std::string &ending) const override;
    [[nodiscard]] Result<std::string> plotBytes(const Plot &plot, const std::string &ending) const override;

private:
    const SupplyList &m_supplies;
};

} // namespace snugwalk
