// SPDX-License-Identifier: Apache-2.0
// Gives every fix within `start`.
#include "position/recorded_position.hpp"

namespace snugwalk {

void RecordedPosition::start()
{
    for (const Fix &fix : m_fixes)
        Q_EMIT fixed(fix);
}

} // namespace snugwalk
