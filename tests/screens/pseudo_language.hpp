// SPDX-License-Identifier: Apache-2.0
// Languages nobody speaks, which show what a language will do to a page before anyone has translated it.
#pragma once

#include <QTranslator>

namespace snugwalk::screens {

/// Every string of the interface that English leaves as it is: longer by some two fifths with accents on its
/// letters, or marked to run from right to left. Catalogue texts stay English.
class PseudoLanguage : public QTranslator {

public:
    enum class Kind { Long, RightToLeft };
    explicit PseudoLanguage(Kind kind) : m_kind(kind) {}
    [[nodiscard]] QString translate(const char *context, const char *source, const char *comment,
                                    int count) const override;
    [[nodiscard]] bool isEmpty() const override { return false; }

private:
    Kind m_kind;
};

} // namespace snugwalk::screens
