// SPDX-License-Identifier: Apache-2.0
// Climate, coast and places each by themselves: a broken one leaves the others.
#include "data/product_world.hpp"

#include "data/world_data.hpp"

namespace snugwalk {

ProductWorld productWorld()
{
    ProductWorld product;
    const auto read = [&](std::string_view name) {
        Result<std::string> bytes = worldData(name);
        if (!bytes)
            product.faults.push_back(bytes.error());
        return bytes ? std::move(bytes).value() : std::string();
    };
    const auto take = [&](Result<World> part, auto World::*member) {
        if (part)
            product.world.*member = std::move((*part).*member);
        else
            product.faults.push_back(part.error());
    };
    take(worldFrom(read("climate.bin"), {}), &World::climate);
    take(worldFrom({}, read("coast.bin")), &World::coast);
    take(worldFrom({}, {}, read("places.bin")), &World::places);
    return product;
}

} // namespace snugwalk
