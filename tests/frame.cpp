// Carries the precompiled header that every test program shares; main.cpp cannot, it defines main.
#include "tests/frame.hpp"
