// SPDX-License-Identifier: Apache-2.0
// A rig as a tree of values: what entries carry, what `rig add` reads and `--json` prints.
#pragma once

#include "base/units.hpp"
#include "base/value.hpp"
#include "rig/rig.hpp"

namespace snugwalk {

/// {"value": 6.4, "unit": "m"}: always SI, always with the unit.
template <typename Q>
[[nodiscard]] Value quantityValue(Q quantity)
{
    return Value::Map{{"value", quantity.si()}, {"unit", siSymbol(DimensionOf<Q>::value)}};
}
template <typename Q>
[[nodiscard]] Value quantityValue(const std::optional<Q> &quantity)
{
    return quantity ? quantityValue(*quantity) : Value();
}

/// Reads {"value", "unit"} in any unit of the dimension, or text as people type it ("21 ft").
[[nodiscard]] Result<double> readSi(const Value &value, Dimension dimension, const std::string &field);

template <typename Q>
[[nodiscard]] Result<Q> readQuantity(const Value &value, const std::string &field)
{
    const Result<double> si = readSi(value, DimensionOf<Q>::value, field);
    if (!si)
        return si.error();
    return Q::fromSi(si.value());
}

/// All members of a rig but its id. Inverse of `rigFromValue`.
[[nodiscard]] Value toValue(const Rig &rig);
/// Missing members keep their default, unknown members are ignored (a newer version wrote them).
/// \returns `InvalidInput` naming the member that cannot be read. Does not `validate`.
[[nodiscard]] Result<Rig> rigFromValue(const Value &value);

} // namespace snugwalk
