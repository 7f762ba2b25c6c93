//! Rings as people and programs draw them, mended where there is one way to do it, and refused where there are two.
