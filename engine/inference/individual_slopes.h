// How much do athletes differ in what goes with their velocity, and what is one athlete's own slope?
//
//   beta_i ~ N(beta, tau^2 I)       in units of the readings' spreads: velocity SDs for one SD of a quality
// With slopes of their own, velocity's steps keep their second moments but for q, so the joint model's likelihood tells tau
// only through higher moments. Each athlete's exact log-likelihood l_i as a function of its slopes is averaged over them by
// Laplace, b_i its mode with the prior, H_i the curvature there [TierneyKadane1986]:
//   log p(tau) = sum_i l_i(b_i) - |b_i - beta|^2 / (2 tau^2) - log|I - tau^2 H_i| / 2  + prior
//   beta_i | data = b_i,  variance (I/tau^2 - H_i)^-1 + that of beta
// on a grid of tau, prior half-normal(0.1) (proposal of this project, no source); q gives up at each tau what the slopes take
// of velocity's variance, tau^2 tr(Q_xx). Of large rosters 300 athletes, evenly taken, settle tau. Sessions' shifts are held.
// Units: those of the readings outside.
// The estimated spread leans low by a quarter to a third, so own slopes are given 1.35 times as much room (measured:
// tests/laws/individual_slopes_laws_test.cpp).
// What it cannot tell: usually much. Few gyms' records settle tau, and then an athlete's slope is the roster's.
#pragma once

#include "inference/joint_model.h"

namespace amentum {

struct IndividualSlopes {
    Estimate spread;                             // tau
    double spread_learned;                       // 1 - posterior variance / prior variance
    std::vector<std::vector<Estimate>> athletes; // beta_i of each predictor
};

IndividualSlopes estimate_individual_slopes(const RosterData& data, const RosterFit& fit,
                                            const PartRunner& run = {});

} // namespace amentum
