// SPDX-License-Identifier: Apache-2.0
// Every journey by taps is a life of this one program; its drivers are the app_*.py beside this folder.
#include "stories.hpp"

using namespace snugwalk::journey;

int main(int argc, char **argv)
{
    Stories all;
    for (Stories some : {roundStories(), rivetStories(), startStories(), wheelStories(), roadStories(),
                         datesStories(), benchStories(), tripStories(), papersStories(), exchangeStories(),
                         settingsStories(), undoStories()})
        all.merge(some);
    return live(argc, argv, all);
}
